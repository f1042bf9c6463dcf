package sagwright.workshop;

import java.time.Instant;

/** What somebody wrote on a record. */
public record Note(Instant at, String words, String initials) {}
