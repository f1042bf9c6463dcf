package sagwright.survey;

import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * How the parameters of a fitted model hang on what the runs showed, to first order: with residuals
 * weighed by W the parameters move by (JᵀWJ)⁻¹JᵀW times a change of the shown moduli. Whatever
 * covariance these have, own and common parts alike, is carried through the same matrix.
 */
final class Estimator {
  /**
   * Below this ratio of least to greatest singular value (columns scaled to one length) two
   * parameters do the same to every run, to rounding of the flexibilities.
   */
  private static final double LEAST_CONDITION = 1e-7;

  private final RealMatrix byShown;

  private Estimator(RealMatrix byShown) {
    this.byShown = byShown;
  }

  /**
   * @param change ∂(shown)/∂(parameter), a row for each run
   * @return null where the runs cannot tell the parameters apart
   */
  static Estimator of(RealMatrix change, Weighting weighting) {
    int p = change.getColumnDimension();
    if (change.getRowDimension() < p) {
      return null;
    }
    RealMatrix weighed = weighting.weigh(change);
    double[] scale = new double[p];
    for (int j = 0; j < p; j++) {
      double length = weighed.getColumnVector(j).getNorm();
      if (!(length > 0)) {
        return null;
      }
      scale[j] = 1 / length;
    }
    RealMatrix scaled = weighed.multiply(new DiagonalMatrix(scale));
    if (new SingularValueDecomposition(scaled).getInverseConditionNumber() < LEAST_CONDITION) {
      return null;
    }
    RealMatrix identity = new DiagonalMatrix(ones(change.getRowDimension()));
    RealMatrix ofScaled = new QRDecomposition(scaled).getSolver().solve(weighting.weigh(identity));
    return new Estimator(new DiagonalMatrix(scale).multiply(ofScaled));
  }

  private static double[] ones(int n) {
    double[] ones = new double[n];
    java.util.Arrays.fill(ones, 1);
    return ones;
  }

  /** The parameters' covariance from the covariance of what the runs showed. */
  RealMatrix covariance(RealMatrix shownCovarianceMPa2) {
    return byShown.multiply(shownCovarianceMPa2).multiply(byShown.transpose());
  }

  /** ∂(parameter)/∂(shown): a row for each parameter, a column for each run. */
  RealMatrix byShown() {
    return byShown;
  }
}
