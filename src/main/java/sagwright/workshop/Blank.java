package sagwright.workshop;

/** A shaft-to-be by its tag, as it was first written. */
public record Blank(long id, String tag) {}
