package sagwright.uncertainty;

/**
 * Whether a first-order budget may be believed: its 95 % interval against that of a Monte Carlo
 * calculation, end by end (JCGM 101:2008, 8.1). The Monte Carlo should have settled to a fifth of
 * the tolerance (8.2).
 *
 * @param lowDifference |low end by the budget − low end by the draws|
 * @param highDifference the same of the high ends
 * @param tolerance of the budget's standard uncertainty, one digit taken as meant: with two, the
 *     second-order effect of an uncertainty of half a percent would already count
 */
public record BudgetCheck(double lowDifference, double highDifference, double tolerance) {
  /** Digits of the standard uncertainty that are taken as meant (JCGM 101, 7.9.2: 1 or 2). */
  public static final int DIGITS = 1;

  /** The share of the tolerance to which the draws should have settled. */
  public static final double SETTLED_SHARE = 0.2;

  public static BudgetCheck of(Estimate byBudget, Interval byDraws) {
    Interval first = Interval.around(byBudget);
    return new BudgetCheck(
        Math.abs(first.low() - byDraws.low()),
        Math.abs(first.high() - byDraws.high()),
        NumericalTolerance.of(byBudget.standardUncertainty(), DIGITS));
  }

  /** Whether the draws bear the budget out. */
  public boolean agrees() {
    return Math.max(lowDifference, highDifference) <= tolerance;
  }
}
