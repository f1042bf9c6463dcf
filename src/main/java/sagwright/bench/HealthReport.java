package sagwright.bench;

import java.util.Optional;

/**
 * How well a line does. Noise, drift and hum mean something only while nothing touches the bench.
 * What too few readings were there for is NaN.
 *
 * @param readingsPerSecond by the head's own clock
 * @param gaugePerSecond new values of the gauge
 * @param line what became of all lines since the session began
 * @param checkSumFailures among the refused
 * @param loadNoiseN standard deviation about a straight line in time
 * @param gaugeNoiseMm likewise
 * @param loadDriftNPerMinute slope of that line
 * @param spectrum of the load; empty with fewer than 128 readings that follow each other
 * @param hum of the mains, where it shows
 */
public record HealthReport(
    double readingsPerSecond,
    double gaugePerSecond,
    LineStatistics line,
    long checkSumFailures,
    double loadNoiseN,
    double gaugeNoiseMm,
    double loadDriftNPerMinute,
    Spectrum spectrum,
    Optional<MainsHum> hum) {}
