package sagwright.workshop;

import java.time.Instant;

/**
 * What is known of a run before its first reading.
 *
 * @param document the sheet without its readings
 * @param calibration the calibration document in force; null where there is none
 * @param order that it is tried for; null for none
 */
public record RunStart(
    Blank blank, Instant startedAt, String document, String calibration, WorkshopOrder order) {}
