package sagwright.grade;

import sagwright.uncertainty.Estimate;

/**
 * The chance that a figure lies within limits, taking it as normal about its estimate (JCGM
 * 106:2012, 7). Chances near 0 keep their relative accuracy.
 */
public final class Chance {
  private Chance() {}

  /** The chance that a figure lies below a limit; 0 or 1 where the estimate has no uncertainty. */
  public static double below(double limit, Estimate figure) {
    return figure.standardUncertainty() == 0
        ? (figure.value() < limit ? 1 : 0)
        : standardBelow(standardised(limit, figure));
  }

  /** The chance that a figure lies above a limit; 0 or 1 where the estimate has no uncertainty. */
  public static double above(double limit, Estimate figure) {
    return figure.standardUncertainty() == 0
        ? (figure.value() > limit ? 1 : 0)
        : standardBelow(-standardised(limit, figure));
  }

  /** The chance that a figure lies between two limits, ends included; 0 where they are crossed. */
  public static double between(double lowest, double highest, Estimate figure) {
    if (figure.standardUncertainty() == 0) {
      return lowest <= figure.value() && figure.value() <= highest ? 1 : 0;
    }
    return standardBetween(standardised(lowest, figure), standardised(highest, figure));
  }

  /** The chance that a standard normal variable lies between two limits. */
  static double standardBetween(double lowest, double highest) {
    if (!(lowest < highest)) {
      return 0;
    }
    // In the upper tail the two chances are near 1: take them from the other side.
    return lowest > 0
        ? standardBelow(-lowest) - standardBelow(-highest)
        : standardBelow(highest) - standardBelow(lowest);
  }

  /** Φ(z). */
  static double standardBelow(double z) {
    if (Double.isInfinite(z)) {
      return z > 0 ? 1 : 0;
    }
    return NormalTail.above(-z);
  }

  private static double standardised(double limit, Estimate figure) {
    return (limit - figure.value()) / figure.standardUncertainty();
  }
}
