package sagwright.check;

/**
 * The classes of ISO 7500-1:2018 with their limits in percent. Limits of the resolution are not
 * among them: a points file does not tell it.
 */
public enum ForceClass {
  HALF(0.5, 0.5, 0.5, 0.75, 0.05),
  ONE(1, 1.0, 1.0, 1.5, 0.1),
  TWO(2, 2.0, 2.0, 3.0, 0.2),
  THREE(3, 3.0, 3.0, 4.5, 0.3);

  private final double number;
  private final double error;
  private final double repeatability;
  private final double reversibility;
  private final double zero;

  ForceClass(double number, double error, double repeatability, double reversibility, double zero) {
    this.number = number;
    this.error = error;
    this.repeatability = repeatability;
    this.reversibility = reversibility;
    this.zero = zero;
  }

  /** 0.5, 1, 2 or 3. */
  public double number() {
    return number;
  }

  public double errorLimitPercent() {
    return error;
  }

  public double repeatabilityLimitPercent() {
    return repeatability;
  }

  public double reversibilityLimitPercent() {
    return reversibility;
  }

  public double zeroLimitPercent() {
    return zero;
  }

  /** The best class that all terms keep; null where they keep none. Unknown terms bind nothing. */
  public static ForceClass of(CalibrationTerms terms) {
    for (ForceClass best : values()) {
      if (best.holds(terms)) {
        return best;
      }
    }
    return null;
  }

  private boolean holds(CalibrationTerms terms) {
    return within(terms.greatestErrorPercent(), error)
        && within(terms.repeatabilityPercent(), repeatability)
        && within(terms.reversibilityPercent(), reversibility)
        && within(terms.zeroReturnPercent(), zero);
  }

  private static boolean within(Double term, double limit) {
    return term == null || term <= limit;
  }
}
