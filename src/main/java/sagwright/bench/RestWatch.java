package sagwright.bench;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The loads before loading: tells when they have been at rest for long enough, how much they
 * scatter, and their median, in converter counts.
 *
 * <p>At rest: over a quarter of a second and five readings at the least, nine in ten lie within the
 * tolerance of their median, and the medians of the older and the newer half agree. Common
 * practice, no source.
 */
final class RestWatch {
  private static final long LEAST_REST_MICROS = 250_000;
  private static final int LEAST_READINGS = 5;
  private static final double LEAST_SHARE_WITHIN = 0.9;

  /** Readings are at rest where they stay within so many standard deviations. */
  private static final double TOLERANCE_SIGMA = 6;

  /** From a median of absolute differences of neighbours to a standard deviation, normal noise. */
  private static final double SIGMA_PER_MEDIAN_DIFFERENCE = 1.4826 / Math.sqrt(2);

  /** So many readings of a load before the rest make it more than a few wild ones. */
  private static final int READINGS_OF_A_LOAD = 3;

  private final double leastToleranceCounts;
  private final RecentReadings loads = new RecentReadings();
  private final Median median = new Median();

  /**
   * @param leastToleranceCounts what scatters by less is at rest however quiet the readings are
   */
  RestWatch(double leastToleranceCounts) {
    this.leastToleranceCounts = leastToleranceCounts;
  }

  void add(long micros, double loadCounts) {
    loads.add(micros, loadCounts);
  }

  void clear() {
    loads.clear();
  }

  /** Whether the newest readings are a rest. */
  boolean isAtRest() {
    int n = newestCount();
    if (n == 0) {
      return false;
    }
    double[] newest = loads.newest(n);
    double tolerance = toleranceCounts(newest);
    double centre = median.evaluate(newest);
    long within = Arrays.stream(newest).filter(c -> Math.abs(c - centre) <= tolerance).count();
    double older = median.evaluate(newest, 0, n / 2);
    double newer = median.evaluate(newest, n / 2, n - n / 2);
    return within >= LEAST_SHARE_WITHIN * n && Math.abs(newer - older) <= tolerance / 2;
  }

  private int newestCount() {
    int n = loads.newestSpanning(LEAST_REST_MICROS);
    return n == 0 || loads.size() < LEAST_READINGS ? 0 : Math.max(n, LEAST_READINGS);
  }

  /**
   * Forgets what came before the rest that was found.
   *
   * @param loadCounts what differs by more than this from the rest was a load
   * @return whether there was a load on before
   */
  boolean startAtTheRest(double loadCounts) {
    double[] all = loads.newest(loads.size());
    int n = newestCount();
    double centre = median.evaluate(loads.newest(n));
    long loaded =
        Arrays.stream(all, 0, all.length - n)
            .filter(c -> Math.abs(c - centre) > loadCounts)
            .count();
    if (loaded >= READINGS_OF_A_LOAD) {
      loads.keepNewest(n);
      return true;
    }
    return false;
  }

  /** When the rest began; only after it was found. */
  long sinceMicros() {
    return loads.oldestMicros();
  }

  double zeroCounts() {
    return loads.median();
  }

  /** What a load must differ by from the zero to have left the rest. */
  double toleranceCounts() {
    return toleranceCounts(loads.newest(loads.size()));
  }

  private double toleranceCounts(double[] counts) {
    double[] steps = new double[counts.length - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = Math.abs(counts[i + 1] - counts[i]);
    }
    double sigma = SIGMA_PER_MEDIAN_DIFFERENCE * median.evaluate(steps);
    return Math.max(leastToleranceCounts, TOLERANCE_SIGMA * sigma);
  }
}
