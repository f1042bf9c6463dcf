package sagwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** One line of the wire, to text and back: docs/contract.md, section 6. Pure functions. */
public final class WireFormat {
  /** Characters of a line before its end; what is longer is refused. */
  public static final int MOST_CHARACTERS = 120;

  private static final String START = "$SG,";
  private static final int CRC_CHARACTERS = 5; // the star and four hex digits
  private static final int FIELDS = 5;
  private static final int MOST_DIGITS = 18; // what a long holds for certain

  private WireFormat() {}

  /** A reading's line without its end. */
  public static String line(Reading reading) {
    String body =
        String.format(
            Locale.ROOT,
            "SG,%d,%d,%s,%s,%02X",
            reading.seq(),
            reading.timeMicros(),
            reading.loadCounts() == null ? "" : reading.loadCounts().toString(),
            reading.gaugeSteps() == null ? "" : reading.gaugeSteps().toString(),
            reading.flags());
    byte[] bytes = body.getBytes(StandardCharsets.US_ASCII);
    return String.format(Locale.ROOT, "$%s*%04X", body, Crc16.of(bytes, 0, bytes.length));
  }

  /** A reading's line as it goes over the wire. */
  public static byte[] bytes(Reading reading) {
    return (line(reading) + "\n").getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * What the first {@code length} bytes are; the line's end (LF, or CR and LF) is not among them.
   */
  static LineOutcome parse(byte[] bytes, int length) {
    if (length > MOST_CHARACTERS) {
      return Refusal.TOO_LONG;
    }
    if (!startsLikeAReading(bytes, length)) {
      String text = new String(bytes, 0, length, StandardCharsets.ISO_8859_1);
      return HeadAnswer.isOne(text) ? new HeadAnswer(text) : Refusal.NOT_A_READING;
    }
    int star = length - CRC_CHARACTERS;
    if (star < START.length() || bytes[star] != '*') {
      return Refusal.NOT_A_READING;
    }
    int stated = hex(bytes, star + 1, length, false);
    if (stated < 0 || stated != Crc16.of(bytes, 1, star)) {
      return Refusal.CHECK_SUM;
    }
    return fields(
        new String(bytes, START.length(), star - START.length(), StandardCharsets.US_ASCII));
  }

  private static boolean startsLikeAReading(byte[] bytes, int length) {
    if (length < START.length()) {
      return false;
    }
    for (int i = 0; i < START.length(); i++) {
      if (bytes[i] != START.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private static LineOutcome fields(String text) {
    String[] fields = text.split(",", -1);
    if (fields.length != FIELDS
        || !isCount(fields[0], Reading.SEQ_VALUES)
        || !isCount(fields[1], Reading.TIME_VALUES)
        || !isSignedOrEmpty(fields[2])
        || !isSignedOrEmpty(fields[3])
        || fields[4].length() != 2) {
      return Refusal.NOT_A_READING;
    }
    byte[] flagDigits = fields[4].getBytes(StandardCharsets.US_ASCII);
    int flags = hex(flagDigits, 0, flagDigits.length, true);
    boolean hasLoad = !fields[2].isEmpty();
    if (flags < 0 || (!hasLoad && (flags & Reading.LOAD_MISSING) == 0)) {
      return Refusal.NOT_A_READING;
    }
    Integer load = null;
    if (hasLoad) {
      long counts = Long.parseLong(fields[2]);
      if (counts < Reading.LEAST_COUNTS || counts > Reading.GREATEST_COUNTS) {
        return Refusal.LOAD_OUT_OF_RANGE;
      }
      load = (int) counts;
    }
    Long gauge = fields[3].isEmpty() ? null : Long.valueOf(fields[3]);
    return new Reading(Integer.parseInt(fields[0]), Long.parseLong(fields[1]), load, gauge, flags);
  }

  /** Digits alone, with a value below {@code values}. */
  private static boolean isCount(String text, long values) {
    return areDigits(text, 0) && Long.parseLong(text) < values;
  }

  private static boolean isSignedOrEmpty(String text) {
    return text.isEmpty()
        || areDigits(text, text.charAt(0) == '-' || text.charAt(0) == '+' ? 1 : 0);
  }

  private static boolean areDigits(String text, int from) {
    int digits = text.length() - from;
    if (digits < 1 || digits > MOST_DIGITS) {
      return false;
    }
    for (int i = from; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  /** The value of hex digits; −1 where a character is none. */
  private static int hex(byte[] bytes, int from, int to, boolean smallAllowed) {
    int value = 0;
    for (int i = from; i < to; i++) {
      int c = bytes[i];
      int digit;
      if (c >= '0' && c <= '9') {
        digit = c - '0';
      } else if (c >= 'A' && c <= 'F') {
        digit = c - 'A' + 10;
      } else if (smallAllowed && c >= 'a' && c <= 'f') {
        digit = c - 'a' + 10;
      } else {
        return -1;
      }
      value = value << 4 | digit;
    }
    return value;
  }
}
