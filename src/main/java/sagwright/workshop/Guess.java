package sagwright.workshop;

import java.time.Instant;

/**
 * What the hand felt before the bench was asked.
 *
 * @param stiffnessNPerMm as it was guessed
 * @param initials whose hand, null where none were set
 */
public record Guess(Instant at, long runId, double stiffnessNPerMm, String initials) {}
