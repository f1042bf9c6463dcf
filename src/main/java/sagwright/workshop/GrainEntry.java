package sagwright.workshop;

import java.time.Instant;
import sagwright.wood.Grain;

/** How a blank's grain looked at one time; a newer entry follows it, none replaces it. */
public record GrainEntry(Instant at, Grain grain, String initials) {}
