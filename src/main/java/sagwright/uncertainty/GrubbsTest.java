package sagwright.uncertainty;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * Grubbs' test for one value that does not belong to a normal sample (Grubbs 1950 and 1969;
 * NIST/SEMATECH e-Handbook, 1.3.5.17.1), two-sided: the greatest deviation from the mean over the
 * standard deviation, against a limit that follows from Student's t.
 *
 * @param index of the value that lies furthest out, from 0
 * @param statistic G
 * @param limit G that one sample in {@code 1/level} passes by luck
 */
public record GrubbsTest(int index, double statistic, double limit) {
  /**
   * With three or four values G is bounded so near its limit that the test sees next to nothing.
   */
  public static final int LEAST_VALUES_TO_SEE = 5;

  /**
   * @param values three or more, not all alike
   * @param level of significance, as 0.05
   */
  public static GrubbsTest of(double[] values, double level) {
    int n = values.length;
    double mean = 0;
    for (double v : values) {
      mean += v / n;
    }
    double squares = 0;
    int furthest = 0;
    for (int i = 0; i < n; i++) {
      squares += (values[i] - mean) * (values[i] - mean);
      if (Math.abs(values[i] - mean) > Math.abs(values[furthest] - mean)) {
        furthest = i;
      }
    }
    double deviation = Math.sqrt(squares / (n - 1));
    return new GrubbsTest(
        furthest, Math.abs(values[furthest] - mean) / deviation, limit(n, level / (2 * n)));
  }

  /**
   * The limit that G passes with a chance for each value and side.
   *
   * @param chance level over 2n for the two-sided test, over n for the one-sided
   */
  static double limit(int n, double chance) {
    double t = new TDistribution(null, n - 2).inverseCumulativeProbability(1 - chance);
    return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
  }

  public boolean standsOut() {
    return statistic > limit;
  }
}
