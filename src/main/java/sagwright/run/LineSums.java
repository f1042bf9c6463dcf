package sagwright.run;

/**
 * What a straight line with equal errors needs of its points: how many, their means and their
 * centred sums of squares and products.
 */
record LineSums(int n, double meanX, double meanY, double sxx, double sxy, double syy) {

  /**
   * Of the points {@code i} for which {@code counts[i]}; two passes, so that offsets cost nothing.
   */
  static LineSums over(double[] x, double[] y, boolean[] counts) {
    int n = 0;
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < x.length; i++) {
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
    for (int i = 0; i < x.length; i++) {
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
