package sagwright.bench.practice;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import sagwright.bench.HeadIdentity;

/**
 * How a head answers commands (docs/contract.md, section 6), in the manner of IEEE 488.2 and SCPI
 * 1999: unknown ones and bad values go to an error queue that SYST:ERR? reads out. Not for several
 * threads.
 */
final class HeadFirmware {
  private static final String NO_ERROR = "0,\"No error\"";

  /** Error numbers and texts: SCPI 1999, volume 2, section 21.8. */
  private static final String UNDEFINED_HEADER = "-113,\"Undefined header\"";

  private static final String OUT_OF_RANGE = "-222,\"Data out of range\"";
  private static final String OVERFLOW = "-350,\"Queue overflow\"";
  private static final int MOST_ERRORS = 10;
  private static final int MOST_CHARACTERS = 80;
  private static final double LEAST_RATE = 10;
  private static final double MOST_RATE = 1000;

  private final HeadIdentity identity;
  private final Deque<String> errors = new ArrayDeque<>();
  private final StringBuilder command = new StringBuilder();
  private boolean isMeasuring;
  private double readingsPerSecond;

  HeadFirmware(HeadIdentity identity, double readingsPerSecond) {
    this.identity = identity;
    this.readingsPerSecond = readingsPerSecond;
  }

  /** Takes bytes as they come; what is to be sent back, whole lines, "" where nothing is. */
  String take(byte[] bytes, int count) {
    StringBuilder answers = new StringBuilder();
    for (char c : new String(bytes, 0, count, StandardCharsets.ISO_8859_1).toCharArray()) {
      if (c == '\n') {
        obey(command.toString().strip().toUpperCase(Locale.ROOT), answers);
        command.setLength(0);
      } else if (command.length() < MOST_CHARACTERS) {
        command.append(c);
      }
    }
    return answers.toString();
  }

  private void obey(String line, StringBuilder answers) {
    if (line.equals("*IDN?")) {
      answers.append(identity.asAnswer()).append('\n');
    } else if (line.equals("INIT")) {
      isMeasuring = true;
    } else if (line.equals("ABOR")) {
      isMeasuring = false;
    } else if (line.equals("SYST:ERR?")) {
      answers.append(errors.isEmpty() ? NO_ERROR : errors.poll()).append('\n');
    } else if (line.startsWith("SAMP:RATE ")) {
      setRate(line.substring("SAMP:RATE ".length()).strip());
    } else if (!line.isEmpty()) {
      note(UNDEFINED_HEADER);
    }
  }

  private void setRate(String value) {
    try {
      double rate = Double.parseDouble(value);
      if (rate >= LEAST_RATE && rate <= MOST_RATE) {
        readingsPerSecond = rate;
        return;
      }
    } catch (NumberFormatException e) {
      // No number is out of range too.
    }
    note(OUT_OF_RANGE);
  }

  private void note(String error) {
    if (errors.size() == MOST_ERRORS) {
      errors.pollLast();
      errors.add(OVERFLOW);
    } else {
      errors.add(error);
    }
  }

  boolean isMeasuring() {
    return isMeasuring;
  }

  double readingsPerSecond() {
    return readingsPerSecond;
  }
}
