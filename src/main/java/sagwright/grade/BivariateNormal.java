package sagwright.grade;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Two standard normal variables with a correlation: the chance that both lie above a limit, by
 * Drezner and Wesolowsky's integral with Genz's remedies where the correlation is near 1 (A. Genz,
 * Numerical computation of rectangular bivariate and trivariate normal and t probabilities,
 * Statistics and Computing 14, 2004, 251–260). Absolute error below 1e-14.
 */
final class BivariateNormal {
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(20);

  /** From here on the integral runs from a correlation of 1 downwards. */
  private static final double NEAR_ONE = 0.925;

  /** exp of less than this adds nothing. */
  private static final double LEAST_EXPONENT = -100;

  /** Beyond this there is nothing left. */
  private static final double FAR = 38;

  private static final double TWO_PI = 2 * Math.PI;

  private BivariateNormal() {}

  /** Lowest and highest of one of the two; what lies further out is taken as at {@link #FAR}. */
  record Limits(double lowest, double highest) {
    Limits {
      lowest = Math.max(-FAR, Math.min(FAR, lowest));
      highest = Math.max(-FAR, Math.min(FAR, highest));
    }
  }

  /** The chance that both lie within their limits. */
  static double within(Limits first, Limits second, double correlation) {
    return bothAbove(first.lowest(), second.lowest(), correlation)
        - bothAbove(first.highest(), second.lowest(), correlation)
        - bothAbove(first.lowest(), second.highest(), correlation)
        + bothAbove(first.highest(), second.highest(), correlation);
  }

  /** The chance that the one lies above h and the other above k. */
  private static double bothAbove(double h, double k, double correlation) {
    double chance =
        Math.abs(correlation) < NEAR_ONE
            ? fromNone(h, k, correlation)
            : correlation > 0
                ? NormalTail.above(Math.max(h, k)) + fromOne(h, k, correlation)
                : opposed(h, -k) - fromOne(h, -k, correlation);
    return Math.max(0, Math.min(1, chance));
  }

  /** The chance that a variable lies above h and its opposite above −k. */
  private static double opposed(double h, double k) {
    return h < k ? Chance.standardBetween(h, k) : 0;
  }

  private static double fromNone(double h, double k, double correlation) {
    double halfAngle = Math.asin(correlation) / 2;
    double squares = (h * h + k * k) / 2;
    double sum = 0;
    for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
      double sin = Math.sin(halfAngle * (1 + RULE.getPoint(i)));
      sum += RULE.getWeight(i) * Math.exp((sin * h * k - squares) / (1 - sin * sin));
    }
    return sum * halfAngle / TWO_PI + NormalTail.above(h) * NormalTail.above(k);
  }

  /** What a correlation short of ±1 changes. */
  private static double fromOne(double h, double k, double correlation) {
    double short2 = (1 - correlation) * (1 + correlation);
    if (!(short2 > 0)) {
      return 0;
    }
    double shortOfOne = Math.sqrt(short2);
    double hk = h * k;
    double apart2 = (h - k) * (h - k);
    double c = (4 - hk) / 8;
    double d = (12 - hk) / 80;
    double closed = 0;
    double exponent = -(apart2 / short2 + hk) / 2;
    if (exponent > LEAST_EXPONENT) {
      closed =
          shortOfOne
              * Math.exp(exponent)
              * (1 - c * (apart2 - short2) * (1 - d * apart2) / 3 + c * d * short2 * short2);
    }
    if (hk > LEAST_EXPONENT) {
      double apart = Math.sqrt(apart2);
      closed -=
          Math.exp(-hk / 2)
              * Math.sqrt(TWO_PI)
              * NormalTail.above(apart / shortOfOne)
              * apart
              * (1 - c * apart2 * (1 - d * apart2) / 3);
    }
    double half = shortOfOne / 2;
    double sum = 0;
    for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
      double x = half * (1 + RULE.getPoint(i));
      double x2 = x * x;
      double at = -(apart2 / x2 + hk) / 2;
      if (at > LEAST_EXPONENT) {
        double root = Math.sqrt(1 - x2);
        double series = 1 + c * x2 * (1 + 5 * d * x2);
        double exact = Math.exp(-hk / 2 * x2 / ((1 + root) * (1 + root))) / root;
        sum += RULE.getWeight(i) * Math.exp(at) * (series - exact);
      }
    }
    return (half * sum - closed) / TWO_PI;
  }
}
