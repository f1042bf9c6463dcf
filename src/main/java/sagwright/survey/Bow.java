package sagwright.survey;

import java.util.Arrays;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How far a shaft is off straight, by rolling it on its supports past the gauge with no load on it:
 * the gauge rises and falls once in a turn, {@code size·cos(φ − side)}; out-of-round makes it rise
 * and fall twice, and is fitted beside where the turns allow it.
 *
 * @param sizeMm how far the axis lies off the straight line between the supports, at the gauge;
 *     half of what the gauge swings through
 * @param sizeStdUncertaintyMm its standard uncertainty
 * @param sideDegrees 0 to 360: the turn at which the bow's belly points the way the load pushes
 * @param sideStdUncertaintyDegrees of that turn; no more than an even guess gives, 104°
 * @param isSeen whether a bow so great comes by luck less than once in a hundred times
 */
public record Bow(
    double sizeMm,
    double sizeStdUncertaintyMm,
    double sideDegrees,
    double sideStdUncertaintyDegrees,
    boolean isSeen) {
  private static final double SURENESS = 0.99;

  /** Mean, two of the bow, two of out-of-round, and one left to see how well they fit. */
  private static final int LEAST_TURNS_FOR_OUT_OF_ROUND = 6;

  /**
   * @param turnDegrees how far the shaft was turned at each reading
   * @param readingMm gauge readings, positive the way the load pushes, from any zero
   * @param gaugeUncertaintyMm standard uncertainty of a reading, above 0
   * @throws IllegalArgumentException where fewer than three turns differ
   */
  public static Bow of(double[] turnDegrees, double[] readingMm, double gaugeUncertaintyMm) {
    int n = readingMm.length;
    double[] own = new double[n];
    Arrays.fill(own, gaugeUncertaintyMm);
    Weighting weighting = Weighting.byUncertainties(own);
    RealMatrix columns = Swing.columns(turnDegrees, 1, 2);
    Estimator estimator =
        n < LEAST_TURNS_FOR_OUT_OF_ROUND ? null : Estimator.of(columns, weighting);
    if (estimator == null) {
      columns = Swing.columns(turnDegrees, 1);
      estimator = Estimator.of(columns, weighting);
    }
    if (estimator == null) {
      throw new IllegalArgumentException("a bow needs readings at three turns or more");
    }
    double[] parameters = estimator.byShown().operate(readingMm);
    double[] left =
        new ArrayRealVector(readingMm)
            .subtract(new ArrayRealVector(columns.operate(parameters)))
            .toArray();
    double variance = variance(left, n - parameters.length, gaugeUncertaintyMm);
    RealMatrix covariance =
        estimator.covariance(MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(variance));
    Swing swing = Swing.of(parameters[1], parameters[2], covariance.getSubMatrix(1, 2, 1, 2));
    return new Bow(
        swing.size(),
        swing.sizeStdUncertainty(),
        swing.atDegrees(),
        swing.atStdUncertaintyDegrees(),
        swing.isSeen());
  }

  /** A reading's: as stated, or as great as what is left over where that is clearly more. */
  private static double variance(double[] left, int freedom, double gaugeUncertaintyMm) {
    double stated = gaugeUncertaintyMm * gaugeUncertaintyMm;
    if (freedom == 0) {
      return stated;
    }
    double squares = new ArrayRealVector(left).dotProduct(new ArrayRealVector(left));
    double limit = new ChiSquaredDistribution(null, freedom).inverseCumulativeProbability(SURENESS);
    return squares / stated > limit ? squares / freedom : stated;
  }
}
