package sagwright.survey;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;

/** Straight least squares with a few columns, for the many candidates of a search. */
final class NormalEquations {
  private NormalEquations() {}

  /** The columns' factors that come nearest to the target; null where columns say the same. */
  static double[] solve(double[][] columns, double[] target) {
    int m = columns.length;
    double[][] products = new double[m][m];
    double[] right = new double[m];
    for (int a = 0; a < m; a++) {
      for (int b = 0; b <= a; b++) {
        products[a][b] = dot(columns[a], columns[b]);
        products[b][a] = products[a][b];
      }
      right[a] = dot(columns[a], target);
    }
    try {
      return new CholeskyDecomposition(MatrixUtils.createRealMatrix(products))
          .getSolver()
          .solve(new ArrayRealVector(right, false))
          .toArray();
    } catch (NonPositiveDefiniteMatrixException same) {
      return null;
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
