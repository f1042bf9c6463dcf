package sagwright.bench;

/**
 * Follows a head's two counters, {@code seq} and {@code time}, through their wraps, and tells
 * readings that were lost from a head that started anew.
 *
 * <p>A counter that steps back has started anew. One that seems to step ahead may have, too: a head
 * that was at seq 60000 and starts again at 0 looks like 5,535 lost readings. There the two
 * counters are held against each other: readings that were lost have taken their time.
 */
final class HeadClock {
  /** What one reading's counters say, against those before it. */
  enum Step {
    FIRST,
    ONWARD,
    REPEATED,
    RESTARTED
  }

  private static final int MOST_LOST_BY_SEQ = Reading.SEQ_VALUES / 2 - 1;
  private static final long MOST_LOST_BY_TIME = Reading.TIME_VALUES / 2;

  /** The wire's fastest head sends 1,000 readings a second; none is taken to send twice that. */
  private static final double LEAST_PERIOD_MICROS = 500;

  /** Fewer lost readings than these are never held against the clock: time stamps jitter. */
  private static final int FEW_READINGS = 20;

  /** A clock that runs on by more than this without readings to match has been set anew. */
  private static final double MOST_UNMATCHED_MICROS = 60e6;

  private int seq = -1;
  private long time;
  private long micros;
  private double periodMicros = LEAST_PERIOD_MICROS;
  private boolean hasPeriod;
  private int missing;

  /** Takes the next reading's counters; {@link #micros} and {@link #missing} then are its own. */
  Step take(Reading reading) {
    int steps = Math.floorMod(reading.seq() - seq, Reading.SEQ_VALUES);
    long passed = Math.floorMod(reading.timeMicros() - time, Reading.TIME_VALUES);
    missing = 0;
    if (seq >= 0 && steps == 0 && passed == 0) {
      return Step.REPEATED;
    }
    Step step = seq < 0 ? Step.FIRST : hasStartedAnew(steps, passed) ? Step.RESTARTED : Step.ONWARD;
    if (step == Step.ONWARD) {
      missing = steps - 1;
      micros += passed;
      learn(steps, passed);
    } else {
      hasPeriod = false;
      periodMicros = LEAST_PERIOD_MICROS;
    }
    seq = reading.seq();
    time = reading.timeMicros();
    return step;
  }

  /** The head's time since the first reading, wraps undone; it stands still over a restart. */
  long micros() {
    return micros;
  }

  /** Readings that did not come between the last two. */
  int missing() {
    return missing;
  }

  private boolean hasStartedAnew(int steps, long passed) {
    if (steps == 0 || steps > MOST_LOST_BY_SEQ || passed >= MOST_LOST_BY_TIME) {
      return true;
    }
    boolean fasterThanTheClock = steps > FEW_READINGS && passed < 0.25 * steps * periodMicros;
    boolean clockRanAway = passed > MOST_UNMATCHED_MICROS + 4 * steps * periodMicros;
    return fasterThanTheClock || clockRanAway;
  }

  private void learn(int steps, long passed) {
    if (steps != 1 || passed == 0) {
      return;
    }
    double period = Math.max(passed, LEAST_PERIOD_MICROS);
    periodMicros = hasPeriod ? periodMicros + 0.1 * (period - periodMicros) : period;
    hasPeriod = true;
  }
}
