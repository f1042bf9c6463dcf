package sagwright.bench;

import java.util.Arrays;

/**
 * What load and gauge show over the last two seconds, in their own counts: for whoever reads them
 * off to calibrate.
 */
public record SettledCounts(Channel load, Channel gauge) {
  static final long OVER_MICROS = 2_000_000;

  /**
   * One channel.
   *
   * @param mean NaN with no reading
   * @param noise standard deviation from reading to reading, whatever the drift; NaN with fewer
   *     than two
   * @param isStill whether the second half does not differ from the first by more than noise makes
   *     it, or a count
   */
  public record Channel(double mean, double noise, int readings, boolean isStill) {
    /** With fewer in two seconds nobody can tell whether it stands still. */
    private static final int LEAST_READINGS = 6;

    /** Halves that differ by chance differ by more about once in ten thousand times. */
    private static final double SIGMAS = 4;

    static Channel of(double[] channel) {
      double[] values = Arrays.stream(channel).filter(v -> !Double.isNaN(v)).toArray();
      int n = values.length;
      double noise = noise(values);
      double half = mean(values, n / 2, n) - mean(values, 0, n / 2);
      boolean still =
          n >= LEAST_READINGS && Math.abs(half) <= 1 + SIGMAS * noise * Math.sqrt(4.0 / n);
      return new Channel(mean(values, 0, n), noise, n, still);
    }

    /** By the differences of neighbours, which a drift hardly touches. */
    private static double noise(double[] values) {
      double sum = 0;
      for (int i = 1; i < values.length; i++) {
        sum += (values[i] - values[i - 1]) * (values[i] - values[i - 1]);
      }
      return values.length < 2 ? Double.NaN : Math.sqrt(sum / (values.length - 1) / 2);
    }

    private static double mean(double[] values, int from, int to) {
      return Arrays.stream(values, from, to).average().orElse(Double.NaN);
    }
  }

  /** NaN stands for a reading that one channel did not give. */
  static SettledCounts of(double[] counts, double[] steps) {
    return new SettledCounts(Channel.of(counts), Channel.of(steps));
  }
}
