package sagwright.workshop;

import java.time.Instant;

/** Since when a blank is no more, and why. */
public record EndEntry(Instant at, String why) {}
