package sagwright.workshop;

import java.time.InstantSource;

/**
 * Who keeps the records: the clock that dates them and the program's version that signs answers.
 */
public record Keeper(InstantSource clock, String program) {}
