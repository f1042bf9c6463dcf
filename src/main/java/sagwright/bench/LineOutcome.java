package sagwright.bench;

/** What one line from the head turned out to be. */
public sealed interface LineOutcome permits Reading, HeadAnswer, Refusal {}
