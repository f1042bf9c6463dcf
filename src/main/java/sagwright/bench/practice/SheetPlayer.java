package sagwright.bench.practice;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import sagwright.bench.ByteLine;
import sagwright.bench.Calibration;
import sagwright.bench.HeadIdentity;
import sagwright.bench.LineLostException;
import sagwright.bench.Reading;
import sagwright.bench.WireFormat;
import sagwright.run.Samples;

/**
 * Plays a run as a bench head at the far end of a line: answers commands, and sends the run's
 * samples at their own pace from INIT on, or after two seconds without one. Faults are made by
 * option. One object plays once.
 */
public final class SheetPlayer {
  private static final HeadIdentity IDENTITY = new HeadIdentity("sheet player", "0", "1.0");

  /** By every clock, however fast the run is played. */
  private static final long UNASKED_NANOS = 2_000_000_000L;

  private static final long POLL_MICROS = 5_000;
  private static final Duration COMMAND_DEADLINE = Duration.ofMillis(100);

  /** What was sent last must be read before the line may be closed. */
  private static final long LINGER_MICROS = 300_000;

  private final List<PlayedReading> readings;
  private final PlayerFaults faults;
  private final PracticeClock clock;
  private final Random random;
  private final HeadFirmware firmware = new HeadFirmware(IDENTITY, 100);
  private long sent;
  private boolean wasAborted;

  /**
   * @param clock whose time the run is played in: {@link PracticeClock#faster} for a faster pace
   * @throws IllegalArgumentException where the run spans more counts than a converter has
   */
  public SheetPlayer(
      Samples samples, Calibration calibration, PlayerFaults faults, PracticeClock clock) {
    this.readings = PlayedRun.readings(samples, calibration, faults.restarts());
    this.faults = faults;
    this.clock = clock;
    this.random = new Random(faults.seed());
  }

  /** How many lines were sent, garbled ones included. */
  public synchronized long sent() {
    return sent;
  }

  /**
   * Plays to the end, or until it is told ABOR.
   *
   * @return whether the run was played to its end
   * @throws LineLostException where the line is lost while it plays
   */
  public boolean play(ByteLine line) throws LineLostException, InterruptedException {
    Thread ears = new Thread(() -> listen(line), "head-commands");
    ears.setDaemon(true);
    ears.start();
    try {
      awaitStart();
      playReadings(line);
      clock.sleep(LINGER_MICROS);
      return !hasBeenAborted();
    } finally {
      ears.interrupt();
    }
  }

  private void awaitStart() throws InterruptedException {
    long opened = System.nanoTime();
    while (!isMeasuring() && System.nanoTime() - opened < UNASKED_NANOS) {
      clock.sleep(POLL_MICROS);
    }
  }

  private void playReadings(ByteLine line) throws LineLostException, InterruptedException {
    long began = clock.micros();
    long stallFrom = Long.MAX_VALUE;
    for (int i = 0; i < readings.size() && !hasBeenAborted(); i++) {
      long due = readings.get(i).dueMicros();
      if (faults.stallS() > 0 && stallFrom == Long.MAX_VALUE && i >= readings.size() / 2) {
        stallFrom = due;
      }
      for (long wait = began + due - clock.micros(); wait > 0; ) {
        clock.sleep(Math.min(wait, 100_000));
        wait = began + due - clock.micros();
      }
      boolean silent = due >= stallFrom && due < stallFrom + faults.stallS() * 1e6;
      if (!silent && random.nextDouble() >= faults.dropShare()) {
        send(line, readings.get(i).reading());
      }
    }
  }

  private void send(ByteLine line, Reading reading) throws LineLostException {
    byte[] bytes = WireFormat.bytes(reading);
    if (random.nextDouble() < faults.flipShare()) {
      bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    }
    synchronized (this) {
      line.write(bytes);
      sent++;
    }
  }

  /** On its own thread: a serial port steps its waits in tenths of a second, readings do not. */
  private void listen(ByteLine line) {
    byte[] buffer = new byte[256];
    try {
      while (!Thread.interrupted()) {
        int count = line.read(buffer, COMMAND_DEADLINE);
        synchronized (this) {
          boolean measuredBefore = firmware.isMeasuring();
          String answers = firmware.take(buffer, count);
          wasAborted |= measuredBefore && !firmware.isMeasuring();
          if (!answers.isEmpty()) {
            line.write(answers.getBytes(StandardCharsets.US_ASCII));
          }
        }
      }
    } catch (LineLostException e) {
      // The playing side finds the line gone by itself, and says so.
      return;
    }
  }

  private synchronized boolean isMeasuring() {
    return firmware.isMeasuring();
  }

  private synchronized boolean hasBeenAborted() {
    return wasAborted;
  }
}
