package sagwright.workshop;

import java.time.Instant;

/**
 * A run on the rod of known size.
 *
 * @param rod its name
 * @param sheet the run's whole sheet
 * @param answer of docs/contract.md, section 4
 */
public record CheckReading(Instant at, String rod, String sheet, String answer) {}
