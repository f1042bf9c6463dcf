package sagwright.modulus;

/** The ratio r = E/G of a wood along the grain, and its standard uncertainty. */
public record ShearRatio(double value, double standardUncertainty) {
  /** For a wood that is not in the species table (docs/contract.md, section 2). */
  public static final double ASSUMED_FOR_UNKNOWN_SPECIES = 14;
}
