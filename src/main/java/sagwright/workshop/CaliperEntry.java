package sagwright.workshop;

import java.time.Instant;

/**
 * A shaft as it was measured at one time; a newer entry follows it, none replaces it.
 *
 * @param at when it was entered
 * @param document a sheet that holds the shaft alone
 * @param why it was entered, in words
 */
public record CaliperEntry(long id, Instant at, String document, String why) {}
