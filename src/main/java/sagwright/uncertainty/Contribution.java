package sagwright.uncertainty;

/**
 * What one source adds to an answer's standard uncertainty: the sensitivity times the source's own
 * standard uncertainty, in the unit of the answer, never negative.
 */
public record Contribution(String source, double standardUncertainty) {}
