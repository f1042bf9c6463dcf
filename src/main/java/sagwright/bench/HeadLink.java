package sagwright.bench;

import java.time.Duration;

/**
 * One open line to a head, from its opening to its end: asks who is there and for readings, until
 * they come, and reads. One thread; {@link #abandon} from any.
 *
 * <p>A head that answers nothing, and one that sends unasked, are served too: what counts is that
 * readings come.
 */
final class HeadLink {
  private static final Duration READ_DEADLINE = Duration.ofMillis(100);
  private static final Duration LAST_COMMAND = Duration.ofMillis(300);
  private static final int IDENTITY_QUESTIONS = 3;

  /** So often readings are asked for in vain before it is said that none come. */
  private static final int PATIENT_QUESTIONS = 3;

  private final ByteLine line;
  private final HeadTiming timing;
  private final LineMonitor monitor;
  private final WireReader reader;
  private final CommandWriter commands;
  private final byte[] buffer = new byte[8192];
  private int questions;
  private boolean askedForReadings;
  private long askedNanos;
  private long readingNanos;
  private long readings;

  /**
   * @param monitor must be among those that the listener passes things on to
   */
  HeadLink(ByteLine line, HeadTiming timing, LineMonitor monitor, WireListener listener) {
    this.line = line;
    this.timing = timing;
    this.monitor = monitor;
    this.reader = WireReader.fromOpening(listener);
    this.commands = new CommandWriter(line);
  }

  /** Waits a tenth of a second at the most for bytes, reads them, and asks where it is time to. */
  void pump() throws LineLostException {
    int count = line.read(buffer, READ_DEADLINE);
    reader.accept(buffer, count);
    long now = System.nanoTime();
    monitor.tick(now);
    if (monitor.line().readings() > readings) {
      readings = monitor.line().readings();
      readingNanos = now;
    } else if (readings > 0 && hasPassed(readingNanos, timing.silence(), now)) {
      throw new LineLostException(
          "the bench head on " + line.description() + " has fallen silent: is it still powered?");
    }
    ask(now);
  }

  private void ask(long now) {
    boolean wantsReadings = readings == 0;
    boolean wantsIdentity = monitor.identity() == null && questions < IDENTITY_QUESTIONS;
    boolean askAgain = questions == 0 || hasPassed(askedNanos, timing.askAgain(), now);
    if ((wantsReadings || wantsIdentity) && askAgain) {
      commands.send("*IDN?");
      questions++;
      askedNanos = now;
      askedForReadings = false;
    } else if (wantsReadings
        && !askedForReadings
        && (monitor.identity() != null || hasPassed(askedNanos, timing.answer(), now))) {
      commands.send("INIT");
      askedForReadings = true;
    }
  }

  private static boolean hasPassed(long sinceNanos, Duration duration, long now) {
    return now - sinceNanos >= duration.toNanos();
  }

  LinkState state() {
    return readings > 0 ? LinkState.READING : LinkState.ASKING;
  }

  String inWords() {
    String where = line.description();
    if (readings > 0) {
      return "readings come from " + where;
    }
    if (questions <= PATIENT_QUESTIONS) {
      return where + " is open: waiting for the bench head";
    }
    return monitor.line().refused() > 0
        ? "what comes from " + where + " is no bench head, or its speed is not the one that was set"
        : "nothing comes from " + where + ": is the bench head powered, and is this its port?";
  }

  /** Tells the head to stop, and closes the line. */
  void close() {
    commands.send("ABOR");
    commands.close(LAST_COMMAND);
    line.close();
  }

  /** Closes a line that is gone, or one that does not let go of its thread. */
  void abandon() {
    line.close();
    commands.close(Duration.ZERO);
  }
}
