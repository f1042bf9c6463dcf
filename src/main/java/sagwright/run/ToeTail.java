package sagwright.run;

/**
 * How far up the seating toe still softens the branch: deflection = c + F/k − A·e^(−F/F₀) fitted to
 * the block means, F₀ from a grid. From it follows by how much the toe's tail lowers the slope of
 * any stretch, which the noise of that stretch alone may hide. The form is common practice, no
 * source; it only steers where the fit window begins.
 */
final class ToeTail {
  /** Grid of F₀ in shares of the greatest load: halves of these, {@link #HALVINGS} times. */
  private static final double[] LONGEST = {0.24, 0.17};

  private static final int HALVINGS = 4;
  private static final double FROM_PROGRESS = 0.02;
  private static final double TO_PROGRESS = 0.95;
  private static final double CHANCE = 2.5;

  private final int blocks;
  private final double[] weight;
  private final double[] load;
  private final double[] tail;
  private final double slope;

  // sums over all blocks before a block: weight, w·F, w·F², w·tail, w·F·tail
  private double[] w;
  private double[] wf;
  private double[] wff;
  private double[] wt;
  private double[] wft;

  /**
   * @param varianceN2 of one sample's load about the branch
   */
  ToeTail(LoadingBranch branch, double varianceN2) {
    blocks = branch.blockCount();
    slope = branch.roughSlope();
    weight = new double[blocks];
    load = new double[blocks];
    tail = new double[blocks];
    double[] deflection = new double[blocks];
    int first = branch.blockAt(FROM_PROGRESS);
    int last = branch.blockAt(TO_PROGRESS);
    BranchSums sums = branch.sums();
    for (int b = 0; b < blocks; b++) {
      weight[b] = sums.samples(b, b + 1);
      load[b] = weight[b] > 0 ? sums.meanLoad(b) / branch.rangeN() : 0;
      deflection[b] = weight[b] > 0 ? sums.meanDeflection(b) : 0;
    }
    double least = CHANCE * CHANCE * varianceN2 / (slope * slope);
    Fit best = null;
    for (double longest : LONGEST) {
      double[] shape = new double[blocks];
      for (int b = first; b < last; b++) {
        shape[b] = Math.exp(-branch.progress(b) / longest);
      }
      for (int halving = 0; halving <= HALVINGS; halving++) {
        Fit fit = fit(deflection, shape, first, last);
        if (fit.factor < 0 && fit.gain > least) {
          least = fit.gain;
          best = fit;
          System.arraycopy(shape, 0, tail, 0, blocks);
        }
        for (int b = first; b < last; b++) {
          shape[b] *= shape[b];
        }
      }
    }
    if (best != null) {
      sumUp(best.factor);
    }
  }

  /** Factor of the tail in mm, and what it takes off the weighted squares of the line, in mm². */
  private record Fit(double factor, double gain) {}

  private Fit fit(double[] deflection, double[] shape, int first, int last) {
    double n = 0;
    double f = 0;
    double d = 0;
    double t = 0;
    for (int b = first; b < last; b++) {
      n += weight[b];
      f += weight[b] * load[b];
      d += weight[b] * deflection[b];
      t += weight[b] * shape[b];
    }
    f /= n;
    d /= n;
    t /= n;
    double ff = 0;
    double ft = 0;
    double fd = 0;
    double tt = 0;
    double td = 0;
    for (int b = first; b < last; b++) {
      double u = load[b] - f;
      double v = shape[b] - t;
      double z = deflection[b] - d;
      ff += weight[b] * u * u;
      ft += weight[b] * u * v;
      fd += weight[b] * u * z;
      tt += weight[b] * v * v;
      td += weight[b] * v * z;
    }
    double own = tt - ft * ft / ff;
    double with = td - ft * fd / ff;
    return own > 1e-9 * tt ? new Fit(with / own, with * with / own) : new Fit(0, 0);
  }

  private void sumUp(double factor) {
    w = new double[blocks + 1];
    wf = new double[blocks + 1];
    wff = new double[blocks + 1];
    wt = new double[blocks + 1];
    wft = new double[blocks + 1];
    for (int b = 0; b < blocks; b++) {
      double t = factor * tail[b];
      w[b + 1] = w[b] + weight[b];
      wf[b + 1] = wf[b] + weight[b] * load[b];
      wff[b + 1] = wff[b] + weight[b] * load[b] * load[b];
      wt[b + 1] = wt[b] + weight[b] * t;
      wft[b + 1] = wft[b] + weight[b] * load[b] * t;
    }
  }

  /** By how much the tail lowers the slope of a stretch of blocks, in N/mm; 0 without a toe. */
  double lowersSlope(int from, int to, double rangeN) {
    if (w == null) {
      return 0;
    }
    double n = w[to] - w[from];
    double f = (wf[to] - wf[from]) / n;
    double t = (wt[to] - wt[from]) / n;
    double ff = wff[to] - wff[from] - n * f * f;
    double ft = wft[to] - wft[from] - n * f * t;
    return Math.max(0, ft / ff / rangeN * slope * slope);
  }
}
