package sagwright.beam;

/**
 * A place along the shaft where an integrand has a kink or a step.
 *
 * @param isRootType whether the integrand ends there like a power of √(x − xMm), as the sections of
 *     a splice do where the core touches the round
 */
public record Kink(double xMm, boolean isRootType) {
  /** A place where the integrand is smooth to either side. */
  public static Kink plain(double xMm) {
    return new Kink(xMm, false);
  }

  /** A place where the integrand ends like a root. */
  public static Kink rootType(double xMm) {
    return new Kink(xMm, true);
  }
}
