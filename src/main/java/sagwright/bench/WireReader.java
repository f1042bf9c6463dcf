package sagwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Turns the bytes of the wire, in pieces of any size, into readings, refusals, gaps and restarts
 * (docs/contract.md, section 6). A line ends with LF and with nothing else: whatever a burst of
 * noise did, the next line is read whole.
 *
 * <p>A pure parser: no thread, no clock of its own, no input or output. Its listener is called from
 * within {@link #accept}.
 */
public final class WireReader {
  /** Of a line that does not end, so many bytes are kept before they are passed on. */
  public static final int MOST_KEPT_TOGETHER = 1024;

  private static final int MOST_SHOWN = WireFormat.MOST_CHARACTERS;

  private final WireListener listener;
  private final HeadClock clock = new HeadClock();
  private final byte[] line = new byte[MOST_KEPT_TOGETHER];
  private int length;
  private boolean lineWasRefused;
  private boolean mayBeTorn;

  private WireReader(WireListener listener, boolean mayBeTorn) {
    this.listener = listener;
    this.mayBeTorn = mayBeTorn;
  }

  /**
   * For a line that was just opened, perhaps in the middle of what the head was sending: bytes up
   * to the first line end are dropped unless they are a whole line.
   */
  public static WireReader fromOpening(WireListener listener) {
    return new WireReader(listener, true);
  }

  /** For a stream that is known to start with a whole line, as the kept bytes of a run do. */
  public static WireReader fromLineStart(WireListener listener) {
    return new WireReader(listener, false);
  }

  /** Takes the first {@code count} bytes; what is behind their last line end waits for the rest. */
  public void accept(byte[] bytes, int count) {
    for (int i = 0; i < count; i++) {
      line[length++] = bytes[i];
      if (bytes[i] == '\n') {
        finishLine();
      } else if (length == MOST_KEPT_TOGETHER) {
        passOnWithoutEnd();
      }
    }
  }

  private void finishLine() {
    int content = length - 1;
    if (content > 0 && line[content - 1] == '\r') {
      content--;
    }
    LineOutcome outcome = lineWasRefused ? Refusal.TOO_LONG : WireFormat.parse(line, content);
    boolean torn = mayBeTorn && outcome instanceof Refusal;
    mayBeTorn = false;
    if (!torn) {
      listener.raw(keep());
      if (!lineWasRefused && content > 0) {
        tell(outcome, content);
      }
    }
    length = 0;
    lineWasRefused = false;
  }

  /** A line without an end must not be gathered for ever: it is refused now, once. */
  private void passOnWithoutEnd() {
    if (!mayBeTorn) {
      listener.raw(keep());
      if (!lineWasRefused) {
        listener.refused(Refusal.TOO_LONG, shown(length));
      }
    }
    lineWasRefused = true;
    length = 0;
  }

  private void tell(LineOutcome outcome, int content) {
    if (outcome instanceof Reading reading) {
      take(reading, content);
    } else if (outcome instanceof HeadAnswer answer) {
      listener.answered(answer);
    } else {
      listener.refused((Refusal) outcome, shown(content));
    }
  }

  private void take(Reading reading, int content) {
    HeadClock.Step step = clock.take(reading);
    if (step == HeadClock.Step.REPEATED) {
      listener.refused(Refusal.REPEATED, shown(content));
      return;
    }
    if (step == HeadClock.Step.RESTARTED) {
      listener.restarted();
    } else if (clock.missing() > 0) {
      listener.gap(clock.missing());
    }
    listener.reading(reading, clock.micros());
  }

  private byte[] keep() {
    return Arrays.copyOf(line, length);
  }

  private String shown(int content) {
    byte[] ascii = Arrays.copyOf(line, Math.min(content, MOST_SHOWN));
    for (int i = 0; i < ascii.length; i++) {
      if (ascii[i] < ' ' || ascii[i] > '~') {
        ascii[i] = '.';
      }
    }
    return new String(ascii, StandardCharsets.US_ASCII);
  }
}
