package sagwright.survey;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * One harmonic, {@code size·cos(φ − at)}, from its two shares.
 *
 * @param size 0 or above
 * @param sizeStdUncertainty along its own direction
 * @param atDegrees 0 to 360
 * @param atStdUncertaintyDegrees no more than an even guess over the circle gives, 104°
 * @param isSeen whether a swing so great comes by luck less than once in a hundred times
 */
record Swing(
    double size,
    double sizeStdUncertainty,
    double atDegrees,
    double atStdUncertaintyDegrees,
    boolean isSeen) {
  private static final double SURENESS = 0.99;

  /** Standard deviation of an angle that may be any of a full turn: 360/√12. */
  private static final double ANY_DEGREES = 360 / Math.sqrt(12);

  /**
   * @param cos share in phase with cos φ
   * @param sin share in phase with sin φ
   * @param covariance of the two, positive definite
   */
  static Swing of(double cos, double sin, RealMatrix covariance) {
    double size = Math.hypot(cos, sin);
    double x = size == 0 ? 1 : cos / size;
    double y = size == 0 ? 0 : sin / size;
    double cc = covariance.getEntry(0, 0);
    double ss = covariance.getEntry(1, 1);
    double cs = covariance.getEntry(0, 1);
    double along = x * x * cc + 2 * x * y * cs + y * y * ss;
    double across = y * y * cc - 2 * x * y * cs + x * x * ss;
    double distance = (cos * cos * ss - 2 * cos * sin * cs + sin * sin * cc) / (cc * ss - cs * cs);
    double at = Math.toDegrees(Math.atan2(y, x));
    return new Swing(
        size,
        Math.sqrt(along),
        at < 0 ? at + 360 : at,
        Math.min(ANY_DEGREES, Math.toDegrees(Math.sqrt(across) / size)),
        distance > new ChiSquaredDistribution(null, 2).inverseCumulativeProbability(SURENESS));
  }

  /** Columns 1, then cos kφ and sin kφ for each harmonic k: a row for each turn. */
  static RealMatrix columns(double[] turnDegrees, int... harmonics) {
    RealMatrix columns = MatrixUtils.createRealMatrix(turnDegrees.length, 1 + 2 * harmonics.length);
    for (int i = 0; i < turnDegrees.length; i++) {
      columns.setEntry(i, 0, 1);
      for (int h = 0; h < harmonics.length; h++) {
        double angle = Math.toRadians(harmonics[h] * turnDegrees[i]);
        columns.setEntry(i, 1 + 2 * h, orZero(Math.cos(angle)));
        columns.setEntry(i, 2 + 2 * h, orZero(Math.sin(angle)));
      }
    }
    return columns;
  }

  /** Rounding of a quarter turn must not pass for a column. */
  private static double orZero(double share) {
    return Math.abs(share) < 1e-12 ? 0 : share;
  }
}
