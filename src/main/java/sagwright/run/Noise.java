package sagwright.run;

/** How much a series scatters from sample to sample, whatever its slow course. */
final class Noise {
  private static final int ENOUGH = 300;
  private static final double MAD_TO_SIGMA = 1.4826;

  private Noise() {}

  /**
   * Standard deviation from the median of the second differences, which a straight ramp and a few
   * spikes leave alone; 0 for a series that is coarser in its steps than in its noise.
   */
  static double sigma(double[] values, int n) {
    int triples = n - 2;
    int stride = Math.max(1, triples / ENOUGH);
    double[] scratch = new double[(triples + stride - 1) / stride];
    int count = 0;
    for (int i = 1; i <= triples; i += stride) {
      scratch[count++] = Math.abs(values[i - 1] - 2 * values[i] + values[i + 1]);
    }
    return MAD_TO_SIGMA * Medians.of(scratch, 0, count) / Math.sqrt(6);
  }

  /**
   * Standard deviation from absolute deviations with a few wild ones among them: the larger of what
   * their median and their 85 % point say, so that coarse steps with a median of 0 have one too.
   * The array is reordered.
   */
  static double sigmaOfDeviations(double[] absolute, int n) {
    double upper = Medians.quantile(absolute, 0, n, Math.min(n - 1, (int) (0.85 * n)));
    double middle = Medians.quantile(absolute, 0, n, n / 2);
    return Math.max(MAD_TO_SIGMA * middle, upper / 1.4395);
  }
}
