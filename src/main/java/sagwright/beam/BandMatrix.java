package sagwright.beam;

/** A symmetric matrix whose rows reach three places to either side of the diagonal. */
final class BandMatrix {
  private static final int REACH = 3;

  private final double[][] rows;

  /** A matrix of zeros. */
  BandMatrix(int size) {
    rows = new double[size][REACH + 1];
  }

  /** Adds weight·v·vᵀ, v standing at {@code first} and the three places behind it. */
  void add(int first, double[] v, double weight) {
    for (int i = 0; i < v.length; i++) {
      for (int j = 0; j <= i; j++) {
        rows[first + i][REACH - i + j] += weight * v[i] * v[j];
      }
    }
  }

  /** This matrix plus a multiple of another of the same size. */
  BandMatrix plus(double factor, BandMatrix other) {
    BandMatrix sum = new BandMatrix(rows.length);
    for (int i = 0; i < rows.length; i++) {
      for (int k = 0; k <= REACH; k++) {
        sum.rows[i][k] = rows[i][k] + factor * other.rows[i][k];
      }
    }
    return sum;
  }

  double[] times(double[] x) {
    double[] product = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      product[i] += rows[i][REACH] * x[i];
      for (int j = Math.max(0, i - REACH); j < i; j++) {
        product[i] += rows[i][REACH - i + j] * x[j];
        product[j] += rows[i][REACH - i + j] * x[i];
      }
    }
    return product;
  }

  /** xᵀ·A·y. */
  double between(double[] x, double[] y) {
    double[] product = times(y);
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * product[i];
    }
    return sum;
  }

  /** The lower triangle L of this positive definite matrix, A = L·Lᵀ (Cholesky). */
  BandMatrix factored() {
    BandMatrix lower = new BandMatrix(rows.length);
    for (int i = 0; i < rows.length; i++) {
      for (int j = Math.max(0, i - REACH); j <= i; j++) {
        double sum = rows[i][REACH - i + j];
        for (int k = Math.max(0, i - REACH); k < j; k++) {
          sum -= lower.rows[i][REACH - i + k] * lower.rows[j][REACH - j + k];
        }
        lower.rows[i][REACH - i + j] = i == j ? Math.sqrt(sum) : sum / lower.rows[j][REACH];
      }
    }
    return lower;
  }

  /** The solution of A·x = b, this being the factor L of A. */
  double[] solve(double[] b) {
    double[] x = b.clone();
    for (int i = 0; i < x.length; i++) {
      for (int k = Math.max(0, i - REACH); k < i; k++) {
        x[i] -= rows[i][REACH - i + k] * x[k];
      }
      x[i] /= rows[i][REACH];
    }
    for (int i = x.length - 1; i >= 0; i--) {
      x[i] /= rows[i][REACH];
      for (int k = Math.max(0, i - REACH); k < i; k++) {
        x[k] -= rows[i][REACH - i + k] * x[i];
      }
    }
    return x;
  }
}
