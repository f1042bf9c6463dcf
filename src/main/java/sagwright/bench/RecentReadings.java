package sagwright.bench;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/** The readings of one channel over the last ten seconds, in the order in which they came. */
final class RecentReadings {
  /** Older readings are let go, so that a slow drift does not count for a long rest. */
  private static final long KEPT_MICROS = 10_000_000;

  private final Median median = new Median();
  private long[] micros = new long[256];
  private double[] values = new double[256];
  private int from;
  private int to;

  void add(long atMicros, double value) {
    while (from < to && micros[from] < atMicros - KEPT_MICROS) {
      from++;
    }
    if (to == micros.length) {
      makeRoom();
    }
    micros[to] = atMicros;
    values[to] = value;
    to++;
  }

  private void makeRoom() {
    int size = to - from;
    int room = Math.max(256, 2 * size);
    micros = Arrays.copyOf(Arrays.copyOfRange(micros, from, to), room);
    values = Arrays.copyOf(Arrays.copyOfRange(values, from, to), room);
    from = 0;
    to = size;
  }

  void clear() {
    from = 0;
    to = 0;
  }

  int size() {
    return to - from;
  }

  /**
   * How many of the newest readings it takes to span {@code spanMicros}; 0 where they do not yet.
   */
  int newestSpanning(long spanMicros) {
    int start = to - 1;
    while (start > from && micros[to - 1] - micros[start] < spanMicros) {
      start--;
    }
    return start >= from && micros[to - 1] - micros[start] >= spanMicros ? to - start : 0;
  }

  void keepNewest(int count) {
    from = to - count;
  }

  /** When the oldest reading kept came; only where there is one. */
  long oldestMicros() {
    return micros[from];
  }

  /** The median of all; NaN where there are none. */
  double median() {
    return median.evaluate(values, from, size());
  }

  /** The newest readings, oldest first. */
  double[] newest(int count) {
    return Arrays.copyOfRange(values, to - count, to);
  }
}
