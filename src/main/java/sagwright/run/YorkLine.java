package sagwright.run;

/**
 * The straight line y = intercept + slope·x through points with errors in both coordinates, by the
 * unified equations of York, Evensen, López Martínez and De Basabe Delgado, "Unified equations for
 * the slope, intercept, and standard errors of the best straight line", American Journal of Physics
 * 72 (2004) 367–375, for errors of x and y that know nothing of each other.
 *
 * <p>The standard errors are those at the adjusted points, from the stated errors alone; {@link
 * #scatterFactor()} is what the points' own scatter multiplies them by.
 *
 * @param covariance of intercept and slope
 * @param weightedSquares S, the weighted sum of squared residuals; n − 2 is expected
 * @param points n
 */
public record YorkLine(
    double intercept,
    double slope,
    double interceptStdError,
    double slopeStdError,
    double covariance,
    double weightedSquares,
    int points) {
  private static final int MOST_ROUNDS = 200;
  private static final double SETTLED = 1e-15;

  /**
   * The line through three or more points, each with its own weights 1/σ² (above 0, finite), found
   * by York's iteration.
   */
  public static YorkLine through(double[] x, double[] y, double[] weightX, double[] weightY) {
    LineSums sums = LineSums.over(x, y);
    double slope = sums.sxy() / sums.sxx();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double before = slope;
      slope = nextSlope(x, y, weightX, weightY, slope);
      if (Math.abs(slope - before) <= SETTLED * Math.abs(slope)) {
        break;
      }
    }
    return atSlope(x, y, weightX, weightY, slope);
  }

  private static double nextSlope(
      double[] x, double[] y, double[] weightX, double[] weightY, double b) {
    double sumW = 0;
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < x.length; i++) {
      double w = weightX[i] * weightY[i] / (weightX[i] + b * b * weightY[i]);
      sumW += w;
      sumX += w * x[i];
      sumY += w * y[i];
    }
    double above = 0;
    double below = 0;
    for (int i = 0; i < x.length; i++) {
      double w = weightX[i] * weightY[i] / (weightX[i] + b * b * weightY[i]);
      double u = x[i] - sumX / sumW;
      double v = y[i] - sumY / sumW;
      double beta = w * (u / weightY[i] + b * v / weightX[i]);
      above += w * beta * v;
      below += w * beta * u;
    }
    return above / below;
  }

  private static YorkLine atSlope(
      double[] x, double[] y, double[] weightX, double[] weightY, double b) {
    int n = x.length;
    double[] w = new double[n];
    double sumW = 0;
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < n; i++) {
      w[i] = weightX[i] * weightY[i] / (weightX[i] + b * b * weightY[i]);
      sumW += w[i];
      sumX += w[i] * x[i];
      sumY += w[i] * y[i];
    }
    double meanX = sumX / sumW;
    double meanY = sumY / sumW;
    double intercept = meanY - b * meanX;
    double sumBeta = 0;
    double sumBeta2 = 0;
    double s = 0;
    for (int i = 0; i < n; i++) {
      double beta = w[i] * ((x[i] - meanX) / weightY[i] + b * (y[i] - meanY) / weightX[i]);
      sumBeta += w[i] * beta;
      sumBeta2 += w[i] * beta * beta;
      double residual = y[i] - intercept - b * x[i];
      s += w[i] * residual * residual;
    }
    double adjustedMean = meanX + sumBeta / sumW;
    double varianceB = 1 / (sumBeta2 - sumBeta * sumBeta / sumW);
    double varianceA = 1 / sumW + adjustedMean * adjustedMean * varianceB;
    return new YorkLine(
        intercept, b, Math.sqrt(varianceA), Math.sqrt(varianceB), -adjustedMean * varianceB, s, n);
  }

  /**
   * The same line where all points share one standard uncertainty of x and one of y: York's
   * equations have a closed form then. One of them 0 gives the ordinary line of y on x or of x on
   * y; both 0 the ordinary line of y on x with the uncertainty that its scatter shows.
   */
  static YorkLine ofEqualErrors(LineSums sums, double sigmaX, double sigmaY) {
    if (sigmaX == 0 && sigmaY == 0) {
      return ordinary(sums);
    }
    // only the ratio steers the slope; units near 1 keep the squares in range
    double unit = Math.max(sigmaX, sigmaY);
    double a = sigmaY / unit * (sigmaY / unit);
    double c = sigmaX / unit * (sigmaX / unit);
    double slope = equalErrorSlope(sums, a, c);
    double variance = unit * unit * (a + slope * slope * c);
    double spread =
        a * a * sums.sxx() + 2 * slope * a * c * sums.sxy() + slope * slope * c * c * sums.syy();
    double adjustedSxx = spread / ((a + slope * slope * c) * (a + slope * slope * c));
    double s = residualSquares(sums, slope) / variance;
    return of(sums, slope, variance, variance / adjustedSxx, s);
  }

  private static double equalErrorSlope(LineSums sums, double varianceY, double varianceX) {
    double half = (varianceX * sums.syy() - varianceY * sums.sxx()) / 2;
    double root = Math.hypot(half, Math.sqrt(varianceX * varianceY) * sums.sxy());
    return half > 0
        ? (half + root) / (varianceX * sums.sxy())
        : varianceY * sums.sxy() / (root - half);
  }

  private static YorkLine ordinary(LineSums sums) {
    double slope = sums.sxy() / sums.sxx();
    int free = sums.n() - 2;
    double variance = residualSquares(sums, slope) / free;
    return of(sums, slope, variance, variance / sums.sxx(), free);
  }

  private static double residualSquares(LineSums sums, double slope) {
    return Math.max(0, sums.syy() - 2 * slope * sums.sxy() + slope * slope * sums.sxx());
  }

  private static YorkLine of(
      LineSums sums, double slope, double variance, double varianceB, double s) {
    return new YorkLine(
        sums.meanY() - slope * sums.meanX(),
        slope,
        Math.sqrt(variance / sums.n() + sums.meanX() * sums.meanX() * varianceB),
        Math.sqrt(varianceB),
        -sums.meanX() * varianceB,
        s,
        sums.n());
  }

  /** √(S/(n−2)): how many times more the points scatter than their stated errors let expect. */
  public double scatterFactor() {
    return Math.sqrt(weightedSquares / (points - 2));
  }

  /**
   * The slope's standard error, or the same times {@link #scatterFactor()} where that is above 1.
   */
  public double slopeUncertainty() {
    return slopeStdError * Math.max(1, scatterFactor());
  }
}
