package sagwright.uncertainty;

/**
 * A value with its standard uncertainty (one sigma), both in the unit that the name of the holder
 * states.
 */
public record Estimate(double value, double standardUncertainty) {
  /** The standard normal's 97.5 % point, the factor behind every "± (95 %)" on screen and paper. */
  public static final double COVERAGE_FACTOR_95 = 1.959963984540054;

  /** Half the width of the 95 % interval. */
  public double halfWidth95() {
    return COVERAGE_FACTOR_95 * standardUncertainty;
  }
}
