package sagwright.firmware;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One reading of the wire (docs/contract.md, section 6).
 *
 * @param seq 0 to 65535
 * @param timeUs microseconds, 0 to 4294967295
 * @param loadCounts converter counts, empty where the head had none
 * @param gaugeSteps steps of 0.001 mm, empty where the gauge gave no new reading
 * @param flags bits 01, 02, 04, 08
 */
record HeadLine(int seq, long timeUs, OptionalInt loadCounts, OptionalInt gaugeSteps, int flags) {
  static final int END_STOP = 1;
  static final int GAUGE_SILENT = 2;
  static final int CONVERTER_SILENT = 4;
  static final int DROPPED = 8;

  private static final Pattern FORM =
      Pattern.compile(
          "\\$(SG,(\\d{1,5}),(\\d{1,10}),(-?\\d{1,7})?,(-?\\d{1,7})?,([0-9A-F]{2}))\\*([0-9A-F]{4})");

  /** The reading that {@code text}, a line without its end, stands for; empty where it is none. */
  static Optional<HeadLine> read(String text) {
    Matcher form = FORM.matcher(text);
    if (!form.matches() || crc(form.group(1)) != Integer.parseInt(form.group(7), 16)) {
      return Optional.empty();
    }
    int seq = Integer.parseInt(form.group(2));
    long timeUs = Long.parseLong(form.group(3));
    OptionalInt load = number(form.group(4));
    boolean refused =
        seq > 0xFFFF
            || timeUs > 0xFFFFFFFFL
            || load.orElse(0) > 0x7FFFFF
            || load.orElse(0) < -0x800000;
    int flags = Integer.parseInt(form.group(6), 16);
    return refused
        ? Optional.empty()
        : Optional.of(new HeadLine(seq, timeUs, load, number(form.group(5)), flags));
  }

  boolean isUsable() {
    return flags == 0 && loadCounts.isPresent() && gaugeSteps.isPresent();
  }

  private static OptionalInt number(String text) {
    return text == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
  }

  /** CRC-16/CCITT-FALSE: polynomial 1021, start FFFF. */
  static int crc(String text) {
    int crc = 0xFFFF;
    for (byte character : text.getBytes(StandardCharsets.US_ASCII)) {
      crc ^= (character & 0xFF) << 8;
      for (int bit = 0; bit < 8; bit++) {
        crc = (crc & 0x8000) == 0 ? crc << 1 : crc << 1 ^ 0x1021;
      }
    }
    return crc & 0xFFFF;
  }
}
