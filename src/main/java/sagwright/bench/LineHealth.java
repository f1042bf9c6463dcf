package sagwright.bench;

import java.util.Arrays;

/**
 * Watches how well a line does: keeps the newest readings and, when asked, works out of them what a
 * maker wants to know of noise, drift and hum. Fed by one thread, asked by any.
 */
public final class LineHealth implements WireListener {
  private static final int KEPT = 1 << 14;
  private static final long KEPT_MICROS = 60_000_000;

  private final long[] micros = new long[KEPT];
  private final int[] seq = new int[KEPT];
  private final double[] counts = new double[KEPT];
  private final double[] steps = new double[KEPT];
  private long taken;
  private long checkSumFailures;
  private LineStatistics line = LineStatistics.NONE;

  @Override
  public synchronized void reading(Reading reading, long atMicros) {
    int at = (int) (taken % KEPT);
    micros[at] = atMicros;
    seq[at] = reading.seq();
    counts[at] = reading.isLoadUsable() ? reading.loadCounts() : Double.NaN;
    steps[at] = reading.isGaugeUsable() ? reading.gaugeSteps() : Double.NaN;
    taken++;
    line = line.plusReading();
  }

  @Override
  public synchronized void gap(int missing) {
    line = line.plusGap(missing);
  }

  /** What came before a restart tells nothing of what comes after it. */
  @Override
  public synchronized void restarted() {
    taken = 0;
  }

  @Override
  public synchronized void refused(Refusal why, String text) {
    line = line.plusRefused();
    checkSumFailures += why == Refusal.CHECK_SUM ? 1 : 0;
  }

  /** Over the readings of the last minute, or the last 16,384 where these are fewer. */
  public HealthReport report(Calibration calibration) {
    HealthWindow window;
    LineStatistics lines;
    long failures;
    synchronized (this) {
      window = window(KEPT_MICROS);
      lines = line;
      failures = checkSumFailures;
    }
    return window.report(calibration, lines, failures);
  }

  /** What both channels show at this moment. */
  public synchronized SettledCounts settled() {
    HealthWindow window = window(SettledCounts.OVER_MICROS);
    return SettledCounts.of(window.counts(), window.steps());
  }

  private HealthWindow window(long lastMicros) {
    int size = (int) Math.min(taken, KEPT);
    long newest = size == 0 ? 0 : micros[index(taken - 1)];
    while (size > 0 && micros[index(taken - size)] < newest - lastMicros) {
      size--;
    }
    int[] order = new int[size];
    Arrays.setAll(order, i -> index(taken - order.length + i));
    return new HealthWindow(
        Arrays.stream(order).mapToLong(i -> micros[i]).toArray(),
        Arrays.stream(order).map(i -> seq[i]).toArray(),
        Arrays.stream(order).mapToDouble(i -> counts[i]).toArray(),
        Arrays.stream(order).mapToDouble(i -> steps[i]).toArray());
  }

  private static int index(long position) {
    return (int) (position % KEPT);
  }
}
