package sagwright.workshop;

import java.time.Instant;

/**
 * A calibration as it was put in force.
 *
 * @param at when it was put in force
 * @param initials whose hand did so, null where none were set
 * @param document a {@code sagwright-calibration/1}
 */
public record KeptCalibration(Instant at, String initials, String document) {}
