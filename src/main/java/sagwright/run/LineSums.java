package sagwright.run;

import java.util.Arrays;

/**
 * What a straight line with equal errors needs of its points: how many, their means and their
 * centred sums of squares and products.
 */
record LineSums(int n, double meanX, double meanY, double sxx, double sxy, double syy) {

  /** Of all points. */
  static LineSums over(double[] x, double[] y) {
    boolean[] all = new boolean[x.length];
    Arrays.fill(all, true);
    return over(x, y, all, 0, x.length);
  }

  /**
   * Of the points {@code from … to}, the last excluded, that count; two passes, so that offsets
   * cost nothing.
   */
  static LineSums over(double[] x, double[] y, boolean[] counts, int from, int to) {
    int n = 0;
    double sumX = 0;
    double sumY = 0;
    for (int i = from; i < to; i++) {
      if (counts[i]) {
        n++;
        sumX += x[i];
        sumY += y[i];
      }
    }
    double meanX = sumX / n;
    double meanY = sumY / n;
    double sxx = 0;
    double sxy = 0;
    double syy = 0;
    for (int i = from; i < to; i++) {
      if (counts[i]) {
        double u = x[i] - meanX;
        double v = y[i] - meanY;
        sxx += u * u;
        sxy += u * v;
        syy += v * v;
      }
    }
    return new LineSums(n, meanX, meanY, sxx, sxy, syy);
  }

  /** The square of the correlation; 0 where x or y does not move. */
  double correlationSquared() {
    double product = sxx * syy;
    return product > 0 ? sxy * sxy / product : 0;
  }
}
