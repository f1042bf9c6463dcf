package sagwright.bench;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * A stretch of readings whose health is to be worked out.
 *
 * @param micros the head's time
 * @param seq the head's count
 * @param counts load in converter counts, NaN where there is none to be used
 * @param steps gauge steps, likewise
 */
record HealthWindow(long[] micros, int[] seq, double[] counts, double[] steps) {
  private static final int LEAST_READINGS = 16;

  HealthReport report(Calibration calibration, LineStatistics line, long checkSumFailures) {
    double newtonPerCount = calibration.load().newtonPerCount();
    double mmPerStep = calibration.gauge().mmPerStep();
    Level load = level(counts);
    Level gauge = level(steps);
    Spectrum spectrum = spectrum(newtonPerCount);
    return new HealthReport(
        rate(i -> true),
        rate(i -> !Double.isNaN(steps[i])),
        line,
        checkSumFailures,
        load.scatter * Math.abs(newtonPerCount),
        gauge.scatter * Math.abs(mmPerStep),
        load.slopePerMinute * newtonPerCount,
        spectrum,
        MainsHum.in(spectrum));
  }

  /** How many a second of those; NaN with fewer than two. */
  private double rate(IntPredicate which) {
    int[] those = IntStream.range(0, micros.length).filter(which).toArray();
    if (those.length < 2) {
      return Double.NaN;
    }
    return (those.length - 1) * 1e6 / (micros[those[those.length - 1]] - micros[those[0]]);
  }

  /** Scatter about a straight line in time, and the slope of that line. */
  private record Level(double scatter, double slopePerMinute) {}

  private Level level(double[] values) {
    SimpleRegression straight = new SimpleRegression();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i])) {
        straight.addData((micros[i] - micros[0]) / 60e6, values[i]);
      }
    }
    if (straight.getN() < LEAST_READINGS) {
      return new Level(Double.NaN, Double.NaN);
    }
    return new Level(Math.sqrt(straight.getMeanSquareError()), straight.getSlope());
  }

  /** Of the newest readings that follow each other without a gap. */
  private Spectrum spectrum(double newtonPerCount) {
    int from = micros.length - 1;
    while (from > 0
        && !Double.isNaN(counts[from - 1])
        && Math.floorMod(seq[from] - seq[from - 1], Reading.SEQ_VALUES) == 1) {
      from--;
    }
    int unbroken = micros.length - Math.max(from, 0);
    if (unbroken < Spectrum.LEAST_POINTS || Double.isNaN(counts[micros.length - 1])) {
      return Spectrum.NONE;
    }
    int points = Integer.highestOneBit(unbroken);
    int start = micros.length - points;
    double perSecond = (points - 1) * 1e6 / (micros[micros.length - 1] - micros[start]);
    double[] loads =
        Arrays.stream(counts, start, micros.length).map(c -> c * newtonPerCount).toArray();
    return Spectrum.of(loads, perSecond);
  }
}
