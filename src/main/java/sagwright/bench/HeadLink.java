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
  private static final Duration STOP_DEADLINE = Duration.ofMillis(500);
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
  private boolean askedSinceIdentity;
  private boolean hasAskedForReadings;
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
      throw new HeadSilentException(
          "the bench head on " + line.description() + " has fallen silent: is it still powered?");
    }
    ask(now);
  }

  private void ask(long now) {
    // Readings may be old ones that the system had kept: a head that then is silent was not asked
    // yet.
    boolean wantsReadings =
        readings == 0 || (!hasAskedForReadings && hasPassed(readingNanos, timing.askAgain(), now));
    boolean wantsIdentity = monitor.identity() == null && questions < IDENTITY_QUESTIONS;
    boolean mayAnswerYet =
        monitor.identity() == null && !hasPassed(askedNanos, timing.answer(), now);
    if (wantsReadings && questions > 0 && !askedSinceIdentity && !mayAnswerYet) {
      commands.send("INIT");
      askedSinceIdentity = true;
      hasAskedForReadings = true;
    } else if ((wantsReadings || wantsIdentity)
        && (questions == 0 || hasPassed(askedNanos, timing.askAgain(), now))) {
      commands.send("*IDN?");
      questions++;
      askedNanos = now;
      askedSinceIdentity = false;
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

  /**
   * Tells the head to stop, waits a little until it is silent (a port that is closed at once drops
   * what it has not sent yet), and closes the line.
   */
  void close() {
    commands.send("ABOR");
    try {
      long start = System.nanoTime();
      while (line.read(buffer, READ_DEADLINE) > 0
          && !hasPassed(start, STOP_DEADLINE, System.nanoTime())) {
        // What still comes is no part of anything.
      }
    } catch (LineLostException e) {
      // It is to be closed anyway.
    }
    abandon();
  }

  /** Closes a line that is gone, or one that does not let go of its thread. */
  void abandon() {
    line.close();
    commands.close();
  }
}
