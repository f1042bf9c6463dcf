package sagwright.workshop;

import java.time.Instant;

/**
 * Something that was done to the records.
 *
 * @param what in words, as "promised 25-014 to R-0007"
 * @param initials whose, null where none were set
 * @param isUndoable false for what adds a measurement: that stays
 */
public record Action(long id, Instant at, String what, String initials, boolean isUndoable) {}
