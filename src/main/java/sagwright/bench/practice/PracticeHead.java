package sagwright.bench.practice;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.function.Consumer;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.ByteLine;
import sagwright.bench.Calibration;
import sagwright.bench.HeadIdentity;
import sagwright.bench.Instruction;
import sagwright.bench.LineLostException;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;
import sagwright.bench.Reading;
import sagwright.bench.TestSnapshot;
import sagwright.bench.WireFormat;

/**
 * A bench head inside the program, with a bench and a hand: opened like a port, it speaks the same
 * bytes. As the session's follower it sees what the maker is told, and its hand does that.
 */
public final class PracticeHead implements LineOpener, Consumer<BenchSnapshot> {
  private static final HeadIdentity IDENTITY = new HeadIdentity("practice bench", "0", "1.0");
  private static final long MOST_SLEEP_MICROS = 20_000;

  /** What a head that nobody reads from can still send before readings are dropped. */
  private static final int MOST_UNREAD_BYTES = 4096;

  private final PracticeOptions options;
  private final PracticeClock clock;
  private final PracticeHand hand;
  private final PracticeBench bench;
  private volatile boolean isPluggedIn = true;

  /**
   * @param calibration that the program is told of too: by it newtons become counts
   */
  public PracticeHead(Calibration calibration, PracticeOptions options, PracticeClock clock) {
    this.options = options;
    this.clock = clock;
    this.hand = new PracticeHand(options.seed(), options.unevenness());
    this.bench = new PracticeBench(calibration, options, hand);
  }

  /**
   * Lays a shaft on the bench.
   *
   * @param mmPerN how far the gauge moves per newton, the frame's give included
   */
  public void lay(double mmPerN) {
    hand.letGo();
    bench.lay(mmPerN);
  }

  /** Takes the shaft off: the hand then has nothing to push on. */
  public void takeOff() {
    hand.letGo();
    bench.lay(0);
  }

  /** Hangs masses on the hook, beside any shaft: the load cell feels them, nothing bends. */
  public void hang(double loadN) {
    bench.hang(loadN);
  }

  /** Lays a gauge block under the stem; 0 takes it away. */
  public void lift(double mm) {
    bench.lift(mm);
  }

  /** The line is lost, and none can be opened. */
  public void pullPlug() {
    isPluggedIn = false;
  }

  public void putPlugBack() {
    isPluggedIn = true;
  }

  /** The hand hears what the maker is told. */
  @Override
  public void accept(BenchSnapshot snapshot) {
    TestSnapshot test = snapshot.test();
    if (test != null) {
      hand.tell(test.instruction(), test.limits().targetN());
    } else {
      hand.tell(Instruction.DONE, 1);
    }
  }

  @Override
  public String description() {
    return "the practice bench";
  }

  @Override
  public ByteLine open() throws LineNotOpenedException {
    if (!isPluggedIn) {
      throw new LineNotOpenedException("the plug of the practice bench is out: put it back in");
    }
    return new PracticeLine();
  }

  /** One plugging in: the head starts anew. */
  private final class PracticeLine implements ByteLine {
    private final HeadFirmware firmware = new HeadFirmware(IDENTITY, options.readingsPerSecond());
    private final ByteArrayOutputStream unread = new ByteArrayOutputStream();
    private final long startMicros = clock.micros();
    private boolean isClosed;
    private boolean isLost;
    private boolean wasMeasuring;
    private boolean hasDropped;
    private double dueMicros;
    private int seq;

    @Override
    public String description() {
      return PracticeHead.this.description();
    }

    @Override
    public int read(byte[] into, Duration deadline) throws LineLostException {
      long end = clock.micros() + deadline.toNanos() / 1000;
      while (true) {
        long sleep;
        synchronized (this) {
          requireOpen();
          measure();
          if (unread.size() > 0) {
            return take(into);
          }
          long now = clock.micros();
          if (now >= end) {
            return 0;
          }
          double next = firmware.isMeasuring() ? Math.min(end, dueMicros) : end;
          sleep = Math.min(MOST_SLEEP_MICROS, Math.max(1, (long) Math.ceil(next - now)));
        }
        try {
          clock.sleep(sleep);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          return 0;
        }
      }
    }

    /** Takes the readings that are due by now. */
    private void measure() {
      boolean measuring = firmware.isMeasuring();
      if (measuring && !wasMeasuring) {
        dueMicros = clock.micros();
      }
      wasMeasuring = measuring;
      double period = 1e6 / firmware.readingsPerSecond();
      while (measuring && dueMicros <= clock.micros()) {
        send(
            bench.next(
                period / 1e6, seq, Math.round(dueMicros - startMicros) % Reading.TIME_VALUES));
        seq = (seq + 1) % Reading.SEQ_VALUES;
        dueMicros += period;
      }
    }

    private void send(Reading reading) {
      if (unread.size() > MOST_UNREAD_BYTES) {
        hasDropped = true;
        return;
      }
      int flags = reading.flags() | (hasDropped ? Reading.HEAD_DROPPED : 0);
      hasDropped = false;
      unread.writeBytes(
          WireFormat.bytes(
              new Reading(
                  reading.seq(),
                  reading.timeMicros(),
                  reading.loadCounts(),
                  reading.gaugeSteps(),
                  flags)));
    }

    private int take(byte[] into) {
      byte[] all = unread.toByteArray();
      int count = Math.min(into.length, all.length);
      System.arraycopy(all, 0, into, 0, count);
      unread.reset();
      unread.write(all, count, all.length - count);
      return count;
    }

    @Override
    public synchronized void write(byte[] bytes) throws LineLostException {
      requireOpen();
      String answers = firmware.take(bytes, bytes.length);
      unread.writeBytes(answers.getBytes(StandardCharsets.US_ASCII));
    }

    private void requireOpen() throws LineLostException {
      if (isClosed) {
        throw new LineLostException("the practice bench is closed");
      }
      isLost |= !isPluggedIn;
      if (isLost) {
        throw new LineLostException("the plug of the practice bench was pulled");
      }
    }

    @Override
    public synchronized void close() {
      isClosed = true;
    }
  }
}
