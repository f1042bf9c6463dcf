package sagwright.beam;

/** A mass at one place along the shaft, in mm from its tip end. */
public record PointMass(double xMm, double massG) {}
