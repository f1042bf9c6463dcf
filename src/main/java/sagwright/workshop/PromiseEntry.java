package sagwright.workshop;

import java.time.Instant;

/**
 * A promise that was made, or taken back by a newer entry.
 *
 * @param isMade false where it was taken back
 */
public record PromiseEntry(Instant at, String orderNumber, boolean isMade, String initials) {}
