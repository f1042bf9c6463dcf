package sagwright.bench;

/**
 * A run's own zero: the medians of the readings before the load left its rest; where it never was
 * at rest, the first usable reading.
 */
public record RunZero(double loadCounts, double gaugeSteps) {}
