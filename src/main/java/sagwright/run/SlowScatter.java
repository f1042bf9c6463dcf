package sagwright.run;

import java.util.function.IntPredicate;

/**
 * Scatter that does not average out from sample to sample: a gauge that wanders, a reading that
 * lags an uneven hand. It shows in the means of sixteen stretches of equal load, which then lie
 * farther off a smooth course than their many samples let expect.
 */
final class SlowScatter {
  private static final int STRETCHES = 16;
  private static final int LEAST_IN_STRETCH = 3;
  private static final int LINE = 2;
  private static final int CUBIC = 4;

  /** Below these a ratio of variances is taken as chance: chi-squared at 2 % and at 0.1 %. */
  private static final double SURELY_MORE_TO_JUDGE_BY = 2;

  private static final double SURELY_MORE_TO_ANSWER_FOR = 2.6;

  private final double[] samples = new double[STRETCHES];
  private final double[] off = new double[STRETCHES];
  private final boolean enough;

  /** The means of stretches of a window of blocks, off a line of this slope, of what counts. */
  SlowScatter(LoadingBranch branch, int from, int to, double slope, IntPredicate counts) {
    double low = branch.progress(from);
    double wide = branch.progress(to - 1) - low;
    for (int b = from; b < to; b++) {
      int j = (int) (STRETCHES * (branch.progress(b) - low) / (wide * (1 + 1e-9)));
      for (int i = branch.start(b); i < branch.start(b + 1); i++) {
        if (counts.test(i)) {
          samples[j]++;
          off[j] += branch.offN(i, slope);
        }
      }
    }
    boolean all = true;
    for (int j = 0; j < STRETCHES; j++) {
      all &= samples[j] >= LEAST_IN_STRETCH;
      off[j] /= samples[j];
    }
    enough = all;
  }

  /**
   * How many times the stretch means vary more about a cubic (which takes a bend or a toe along)
   * than samples of this variance would let them; 1 where they do not surely.
   */
  double inflation(double varianceN2) {
    return surely(varianceN2, CUBIC, SURELY_MORE_TO_JUDGE_BY);
  }

  /** The same about a straight line: S/(m−2) of the m means, where it is surely above 1, else 1. */
  double inflationAboutLine(double varianceN2) {
    return surely(varianceN2, LINE, SURELY_MORE_TO_ANSWER_FOR);
  }

  private double surely(double varianceN2, int terms, double chance) {
    if (!enough || varianceN2 == 0) {
      return 1;
    }
    double ratio = squaresAbout(terms) / varianceN2 / (STRETCHES - terms);
    return ratio > chance ? ratio : 1;
  }

  /**
   * Weighted squares left by a polynomial of so many terms, found by orthogonalising its powers.
   */
  private double squaresAbout(int terms) {
    double[] left = off.clone();
    double[][] basis = new double[terms][STRETCHES];
    for (int k = 0; k < terms; k++) {
      for (int j = 0; j < STRETCHES; j++) {
        basis[k][j] = Math.pow((j - STRETCHES / 2.0) / STRETCHES, k);
      }
      for (int earlier = 0; earlier < k; earlier++) {
        takeOut(basis[k], basis[earlier]);
      }
      takeOut(left, basis[k]);
    }
    return product(left, left);
  }

  private void takeOut(double[] from, double[] direction) {
    double share = product(from, direction) / product(direction, direction);
    for (int j = 0; j < STRETCHES; j++) {
      from[j] -= share * direction[j];
    }
  }

  private double product(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < STRETCHES; j++) {
      sum += samples[j] * a[j] * b[j];
    }
    return sum;
  }
}
