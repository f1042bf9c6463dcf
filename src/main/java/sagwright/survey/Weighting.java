package sagwright.survey;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Least squares' weights: residuals with a covariance V are turned into residuals of unit variance,
 * independent of one another, by the inverse of V's Cholesky factor.
 */
final class Weighting {
  private final double[][] factor;

  private Weighting(double[][] factor) {
    this.factor = factor;
  }

  /**
   * @param covarianceMPa2 positive definite
   */
  static Weighting byCovariance(RealMatrix covarianceMPa2) {
    return new Weighting(new CholeskyDecomposition(covarianceMPa2).getL().getData());
  }

  static Weighting byUncertainties(double[] standardUncertaintiesMPa) {
    double[][] factor = new double[standardUncertaintiesMPa.length][];
    for (int i = 0; i < factor.length; i++) {
      factor[i] = new double[i + 1];
      factor[i][i] = standardUncertaintiesMPa[i];
    }
    return new Weighting(factor);
  }

  double[] weigh(double[] valuesMPa) {
    double[] weighed = new double[valuesMPa.length];
    for (int i = 0; i < weighed.length; i++) {
      double rest = valuesMPa[i];
      for (int j = 0; j < i; j++) {
        rest -= factor[i][j] * weighed[j];
      }
      weighed[i] = rest / factor[i][i];
    }
    return weighed;
  }

  /** Each column weighed. */
  RealMatrix weigh(RealMatrix columns) {
    RealMatrix weighed =
        MatrixUtils.createRealMatrix(columns.getRowDimension(), columns.getColumnDimension());
    for (int j = 0; j < columns.getColumnDimension(); j++) {
      weighed.setColumn(j, weigh(columns.getColumn(j)));
    }
    return weighed;
  }
}
