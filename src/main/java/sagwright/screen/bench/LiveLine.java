package sagwright.screen.bench;

import sagwright.drawing.FittedLine;

/**
 * The line through a run that is still being made, for the eye alone: plain least squares of
 * deflection on load, from a fifth of the greatest load so far up to it. The answer is fitted anew
 * when the run has ended.
 */
final class LiveLine {
  /** Of the load to go to; with less there is little but the seating to be seen. */
  private static final double LEAST_SHARE = 0.3;

  private static final double FROM_SHARE = 0.2;
  private static final int LEAST_READINGS = 10;

  private LiveLine() {}

  /**
   * @param mm deflections in mm
   * @param n loads in N, one for each, in the order in which they were read
   * @param targetN the load to go to
   * @return null while there is too little to draw a line through
   */
  static FittedLine of(double[] mm, double[] n, double targetN) {
    int last = 0;
    for (int i = 1; i < n.length; i++) {
      last = n[i] > n[last] ? i : last;
    }
    if (n.length == 0 || n[last] < LEAST_SHARE * targetN) {
      return null;
    }
    double from = FROM_SHARE * n[last];
    int count = 0;
    double meanN = 0;
    double meanMm = 0;
    double squares = 0;
    double products = 0;
    for (int i = 0; i <= last; i++) {
      if (n[i] >= from) {
        count++;
        double offN = n[i] - meanN;
        meanN += offN / count;
        meanMm += (mm[i] - meanMm) / count;
        squares += offN * (n[i] - meanN);
        products += offN * (mm[i] - meanMm);
      }
    }
    if (count < LEAST_READINGS || !(products > 0)) {
      return null;
    }
    double stiffness = squares / products;
    return new FittedLine(stiffness, meanN - stiffness * meanMm, from, n[last]);
  }
}
