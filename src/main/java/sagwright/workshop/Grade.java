package sagwright.workshop;

import java.time.Instant;

/**
 * A grade as it was given: the answer of docs/contract.md, section 5, and what it rests on.
 *
 * @param orderNumber of the order
 * @param basis what it was worked out from
 * @param program the version that worked it out
 * @param initials of who asked for it, null where none were set
 */
public record Grade(
    long id,
    Instant at,
    String orderNumber,
    GradeBasis basis,
    String answer,
    String program,
    String initials) {}
