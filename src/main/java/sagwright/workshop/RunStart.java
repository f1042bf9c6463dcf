package sagwright.workshop;

import java.time.Instant;
import sagwright.bench.LoadLimits;

/**
 * What is known of a run before its first reading.
 *
 * @param document the sheet without its readings
 * @param calibration the calibration document in force; null where there is none
 * @param limits how far the test was to load; null for a run that was not recorded
 * @param order that it is tried for; null for none
 */
public record RunStart(
    Blank blank,
    Instant startedAt,
    String document,
    String calibration,
    LoadLimits limits,
    WorkshopOrder order) {}
