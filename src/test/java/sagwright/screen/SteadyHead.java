package sagwright.screen;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import sagwright.bench.ByteLine;
import sagwright.bench.LineLostException;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;
import sagwright.bench.Reading;
import sagwright.bench.WireFormat;

/** A head that only sends, faster than the clock so that a test need not wait: what hangs on it. */
final class SteadyHead implements LineOpener {
  private static final int MICROS = 12_500;
  private static final long NANOS_BETWEEN = 2_000_000;

  private volatile double counts;

  /** From now on it shows so many counts. */
  void show(double next) {
    counts = next;
  }

  @Override
  public String description() {
    return "a steady head";
  }

  @Override
  public ByteLine open() throws LineNotOpenedException {
    return new Line();
  }

  private final class Line implements ByteLine {
    private final Random random = new Random(5);
    private volatile boolean closed;
    private int seq;

    @Override
    public String description() {
      return "a steady head";
    }

    @Override
    public int read(byte[] into, Duration deadline) throws LineLostException {
      LockSupport.parkNanos(NANOS_BETWEEN);
      if (closed) {
        throw new LineLostException("closed");
      }
      int shown = (int) Math.round(counts + 20 * random.nextGaussian());
      Reading reading = new Reading(seq % 65_536, (long) seq * MICROS, shown, null, 0);
      seq++;
      byte[] line = WireFormat.bytes(reading);
      System.arraycopy(line, 0, into, 0, line.length);
      return line.length;
    }

    @Override
    public void write(byte[] bytes) {
      if (new String(bytes, StandardCharsets.US_ASCII).isEmpty()) {
        throw new IllegalArgumentException("an empty command");
      }
    }

    @Override
    public void close() {
      closed = true;
    }
  }
}
