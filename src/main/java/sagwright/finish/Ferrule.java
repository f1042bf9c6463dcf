package sagwright.finish;

/**
 * The metal ring at the tip: over the first {@code lengthMm} wood fills {@code boreMm} and metal
 * the ring out to the taper's diameter. It counts for mass and balance; stiffness takes the shaft
 * as if the wood ran full there.
 */
public record Ferrule(double lengthMm, double boreMm, double densityKgM3) {}
