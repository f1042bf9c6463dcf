package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Mutated lines by the hundred thousand, the reader held against a second reading of the same bytes
 * that shares no code with it: split at LF, a regular expression, a table-driven check sum.
 */
class WireFuzzTest {
  private static final byte[] CHATTER =
      "$GPRMC,081836,A,3751.65,S,14507.36,E*62\r\n".getBytes(StandardCharsets.US_ASCII);
  private static final int BATCH = 20_000;
  private static final Pattern GOOD =
      Pattern.compile(
          "\\$(SG,(\\d{1,18}),(\\d{1,18}),([+-]?\\d{1,18})?,([+-]?\\d{1,18})?,([0-9A-Fa-f]{2}))\\*([0-9A-F]{4})");
  private static final int[] TABLE = table();

  /** What a line does to bytes: every kind of it is one that the check sum finds for certain. */
  private static final int NOISE_KINDS = 8;

  /** Bytes lost, added or swapped besides: the check sum lets one in 65,536 of these through. */
  private static final int ALL_KINDS = 11;

  @ParameterizedTest
  @ValueSource(longs = {1, 20260302})
  void everyNoisyLineIsCountedAndNoneWronglyUsed(long seed) {
    Tally tally = fuzz(seed, 150_000, NOISE_KINDS);
    assertEquals(0, tally.neverSent);
    assertTrue(tally.used > 20_000, "good lines must be among them, are " + tally.used);
    assertTrue(tally.refused > 50_000, "bad lines must be among them, are " + tally.refused);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 20260302})
  void linesWithBytesLostOrAddedAreCountedAndUsedOnlyWhereTheCheckSumFits(long seed) {
    Tally tally = fuzz(seed, 100_000, ALL_KINDS);
    assertTrue(tally.neverSent <= 3, "against the odds: " + tally.neverSent);
  }

  @Test
  @Tag("long")
  void tenMillionNoisyLinesAreCountedAndNoneWronglyUsed() {
    Tally tally = fuzz(7, 10_000_000, NOISE_KINDS);
    assertEquals(0, tally.neverSent);
    assertTrue(tally.refused > 4_000_000, "refused " + tally.refused);
  }

  @Test
  @Tag("long")
  void whatSlipsThroughTheCheckSumIsNoMoreThanItsOdds() {
    Tally tally = fuzz(8, 3_000_000, ALL_KINDS);
    assertTrue(tally.neverSent <= 3_000_000 * 3 / 11 / 65_536 * 2, "slipped: " + tally.neverSent);
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 4, 5})
  void afterAnyBurstTheReaderIsBackWithinOneLine(long seed) {
    Random random = new Random(seed);
    for (int trial = 0; trial < 2_000; trial++) {
      Heard heard = new Heard();
      WireReader reader = WireReader.fromLineStart(heard);
      byte[] burst = new byte[random.nextInt(trial % 10 == 0 ? 5_000 : 200)];
      random.nextBytes(burst);
      byte[] lost = WireFormat.bytes(new Reading(1, 10, 1, 1L, 0));
      byte[] read = WireFormat.bytes(new Reading(2, 20, 2, 2L, 0));
      reader.accept(burst, burst.length);
      reader.accept(lost, lost.length);
      int before = heard.readings.size();
      reader.accept(read, read.length);
      String at = "seed " + seed + ", trial " + trial;
      assertEquals(before + 1, heard.readings.size(), at);
      assertEquals(2, heard.readings.get(before).seq(), at);
    }
  }

  private record Tally(long used, long refused, long neverSent) {}

  private static Tally fuzz(long seed, int lines, int kinds) {
    Random random = new Random(seed);
    long used = 0;
    long refused = 0;
    long neverSent = 0;
    for (int from = 0; from < lines; from += BATCH) {
      int count = Math.min(BATCH, lines - from);
      Set<String> sent = new HashSet<>();
      byte[] stream = mutated(random, count, kinds, sent);
      Heard heard = new Heard();
      feed(random, stream, WireReader.fromLineStart(heard));
      String at = "seed " + seed + ", lines from " + from;
      Expected expected = Expected.of(stream);
      assertEquals(expected.readings, heard.readings.size() + repeated(heard), at);
      assertEquals(expected.refused, heard.refusals.size() - repeated(heard), at);
      for (Reading reading : heard.readings) {
        neverSent += sent.contains(WireFormat.line(reading)) ? 0 : 1;
      }
      used += heard.readings.size();
      refused += heard.refusals.size();
    }
    return new Tally(used, refused, neverSent);
  }

  private static int repeated(Heard heard) {
    return (int) heard.refusals.stream().filter(r -> r == Refusal.REPEATED).count();
  }

  private static void feed(Random random, byte[] stream, WireReader reader) {
    int from = 0;
    while (from < stream.length) {
      int size = Math.min(stream.length - from, 1 + random.nextInt(300));
      byte[] piece = java.util.Arrays.copyOfRange(stream, from, from + size);
      reader.accept(piece, size);
      from += size;
    }
  }

  private static byte[] mutated(Random random, int lines, int kinds, Set<String> sent) {
    ByteArrayOutputStream stream = new ByteArrayOutputStream(lines * 45);
    for (int i = 0; i < lines; i++) {
      Reading reading =
          new Reading(
              i & 0xFFFF,
              12_500L * i,
              random.nextInt(20) == 0 ? null : random.nextInt(1 << 24) - (1 << 23),
              random.nextInt(3) == 0 ? null : (long) random.nextInt(40_000) - 20_000,
              0);
      reading = reading.loadCounts() == null ? flagged(reading) : reading;
      sent.add(WireFormat.line(reading));
      mutate(random, random.nextInt(kinds), WireFormat.bytes(reading), stream);
    }
    return stream.toByteArray();
  }

  private static Reading flagged(Reading r) {
    return new Reading(r.seq(), r.timeMicros(), null, r.gaugeSteps(), Reading.LOAD_MISSING);
  }

  private static void mutate(Random random, int kind, byte[] line, ByteArrayOutputStream to) {
    int at = random.nextInt(line.length);
    switch (kind) {
      case 0 -> { // one to three flipped bits
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
          line[random.nextInt(line.length)] ^= (byte) (1 << random.nextInt(8));
        }
        to.writeBytes(line);
      }
      case 1 -> { // a burst of noise over two bytes
        line[at] = (byte) random.nextInt(256);
        line[Math.min(line.length - 1, at + 1)] = (byte) random.nextInt(256);
        to.writeBytes(line);
      }
      case 2 -> to.write(line, 0, at); // torn
      case 3 -> to.writeBytes(CHATTER);
      case 4 -> { // far too long
        to.write(line, 0, at);
        to.writeBytes("7".repeat(120 + random.nextInt(2_500)).getBytes(StandardCharsets.US_ASCII));
        to.write(line, at, line.length - at);
      }
      case 5 -> { // twice
        to.writeBytes(line);
        to.writeBytes(line);
      }
      case 6, 7 -> to.writeBytes(line);
      case 8 -> { // a byte lost
        to.write(line, 0, at);
        to.write(line, at + 1, line.length - at - 1);
      }
      case 9 -> { // a byte too many
        to.write(line, 0, at);
        to.write(random.nextInt(256));
        to.write(line, at, line.length - at);
      }
      default -> { // two bytes swapped
        byte b = line[at];
        int other = random.nextInt(line.length);
        line[at] = line[other];
        line[other] = b;
        to.writeBytes(line);
      }
    }
  }

  /** The second reading of the bytes. */
  private record Expected(int readings, int refused) {
    static Expected of(byte[] stream) {
      int readings = 0;
      int refused = 0;
      String all = new String(stream, StandardCharsets.ISO_8859_1);
      int from = 0;
      for (int end = all.indexOf('\n'); end >= 0; end = all.indexOf('\n', from)) {
        String line = all.substring(from, end);
        from = end + 1;
        line = line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
        if (line.isEmpty()) {
          continue;
        }
        if (isGood(line)) {
          readings++;
        } else {
          refused++;
        }
      }
      // What lies behind the last line end is refused only once it is longer than can be gathered.
      return new Expected(readings, all.length() - from >= 1024 ? refused + 1 : refused);
    }

    private static boolean isGood(String line) {
      Matcher m = GOOD.matcher(line);
      if (line.length() > 120 || !m.matches()) {
        return false;
      }
      if (Integer.parseInt(m.group(7), 16) != crc(m.group(1))) {
        return false;
      }
      boolean inRange =
          Long.parseLong(m.group(2)) <= 65535 && Long.parseLong(m.group(3)) <= 4294967295L;
      if (m.group(4) == null) {
        return inRange && (Integer.parseInt(m.group(6), 16) & 4) != 0;
      }
      long load = Long.parseLong(m.group(4));
      return inRange && load >= -8388608 && load <= 8388607;
    }
  }

  private static int crc(String text) {
    int crc = 0xFFFF;
    for (byte b : text.getBytes(StandardCharsets.ISO_8859_1)) {
      crc = (crc << 8 ^ TABLE[(crc >> 8 ^ b) & 0xFF]) & 0xFFFF;
    }
    return crc;
  }

  private static int[] table() {
    int[] table = new int[256];
    for (int i = 0; i < 256; i++) {
      int r = i << 8;
      for (int bit = 0; bit < 8; bit++) {
        r = (r & 0x8000) != 0 ? r << 1 ^ 0x1021 : r << 1;
      }
      table[i] = r & 0xFFFF;
    }
    return table;
  }
}
