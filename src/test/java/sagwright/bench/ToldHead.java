package sagwright.bench;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/**
 * A head that is told what load lies on its bench, on the far side of a line: from INIT on it sends
 * readings without end. Its own time goes with its readings, so that a slow machine changes nothing
 * in what they say.
 */
public final class ToldHead implements AutoCloseable {
  private static final int BURSTS_PER_SECOND = 200;
  private static final double REST_COUNTS = 12_345;
  private static final double REST_STEPS = 500;
  private static final double NOISE_N = 0.004;

  private final ByteLine line;
  private final Calibration calibration;
  private final int readingsPerSecond;
  private final double stiffnessNPerMm;
  private final Thread thread = new Thread(this::live, "told-head");
  private final Random random = new Random(3);
  private volatile double toN;
  private volatile double perSecondN = 1e9;
  private volatile double loadN;
  private volatile boolean isEnding;
  private final AtomicInteger sent = new AtomicInteger();

  public ToldHead(
      ByteLine line, Calibration calibration, int readingsPerSecond, double stiffnessNPerMm) {
    this.line = line;
    this.calibration = calibration;
    this.readingsPerSecond = readingsPerSecond;
    this.stiffnessNPerMm = stiffnessNPerMm;
    thread.setDaemon(true);
  }

  public ToldHead start() {
    thread.start();
    return this;
  }

  /** From now on the load goes there, so fast. */
  public void load(double newtons, double newtonsPerSecond) {
    perSecondN = newtonsPerSecond;
    toN = newtons;
  }

  public boolean isAt(double newtons) {
    return loadN == newtons;
  }

  /** How many readings it has sent. */
  public int sent() {
    return sent.get();
  }

  private void live() {
    byte[] heard = new byte[256];
    boolean isMeasuring = false;
    try {
      while (!isEnding) {
        int count = line.read(heard, Duration.ZERO);
        String commands = new String(heard, 0, count, StandardCharsets.US_ASCII);
        if (commands.contains("*IDN?")) {
          line.write("SAGWRIGHT,told,1,0.1\n".getBytes(StandardCharsets.US_ASCII));
        }
        isMeasuring = commands.contains("INIT") || (isMeasuring && !commands.contains("ABOR"));
        if (isMeasuring) {
          for (int i = 0; i < readingsPerSecond / BURSTS_PER_SECOND; i++) {
            line.write(WireFormat.bytes(next()));
            sent.incrementAndGet();
          }
        }
        LockSupport.parkNanos(1_000_000_000L / BURSTS_PER_SECOND);
      }
    } catch (LineLostException e) {
      return; // the plug is pulled
    }
  }

  private Reading next() {
    double step = perSecondN / readingsPerSecond;
    loadN += Math.max(-step, Math.min(step, toN - loadN));
    double shownN = loadN + NOISE_N * random.nextGaussian();
    int number = sent.get();
    long micros = number * 1_000_000L / readingsPerSecond;
    return new Reading(
        number % Reading.SEQ_VALUES,
        micros % Reading.TIME_VALUES,
        (int) Math.round(REST_COUNTS + calibration.load().counts(shownN)),
        Math.round(REST_STEPS + calibration.gauge().steps(loadN / stiffnessNPerMm)),
        0);
  }

  @Override
  public void close() {
    isEnding = true;
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
