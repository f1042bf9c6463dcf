package sagwright.workshop;

import java.time.Instant;

/** From when a blank has been at a stage. */
public record StageEntry(Instant at, String stage) {}
