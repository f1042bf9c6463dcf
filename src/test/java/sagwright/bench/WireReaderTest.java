package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireReaderTest {
  private final Heard heard = new Heard();
  private final WireReader reader = WireReader.fromLineStart(heard);

  private void send(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
    reader.accept(bytes, bytes.length);
  }

  private static String line(long seq, long time) {
    return line(seq, time, "-1204", "3071", "00");
  }

  private static String line(long seq, long time, String load, String gauge, String flags) {
    return sealed("SG," + seq + "," + time + "," + load + "," + gauge + "," + flags);
  }

  private static String sealed(String body) {
    byte[] bytes = body.getBytes(StandardCharsets.ISO_8859_1);
    return String.format("$%s*%04X\n", body, Crc16.of(bytes, 0, bytes.length));
  }

  @Test
  void checkSumGivesThePublishedCheckValue() {
    byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
    assertEquals(0x29B1, Crc16.of(digits, 0, digits.length));
  }

  @Test
  void aLineIsReadAndWrittenAlike() {
    Reading whole = new Reading(65535, 4294967295L, -8388608, -17L, 0x0A);
    Reading bare = new Reading(0, 0, null, null, 0x06);
    send(WireFormat.line(whole) + "\n" + WireFormat.line(bare) + "\r\n");
    assertEquals(List.of(whole, bare), heard.readings);
    assertEquals(List.of(), heard.refusals);
    assertFalse(bare.isLoadUsable());
    assertFalse(bare.isGaugeUsable());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7, 50, 4096})
  void piecesOfAnySizeGiveTheSameReadings(int size) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < 300; i++) {
      all.append(line(i, 12_500L * i));
    }
    byte[] bytes = all.toString().getBytes(StandardCharsets.ISO_8859_1);
    for (int from = 0; from < bytes.length; from += size) {
      byte[] piece = java.util.Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + size));
      reader.accept(piece, piece.length);
    }
    assertEquals(300, heard.readings.size());
    assertEquals(299 * 12_500L, heard.micros.get(299));
    assertArrayEquals(bytes, heard.raw.toByteArray());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          SG,1,2,8388607,5,00     | READ
          SG,1,2,-8388608,5,00    | READ
          SG,1,2,8388608,5,00     | LOAD_OUT_OF_RANGE
          SG,1,2,-8388609,5,00    | LOAD_OUT_OF_RANGE
          SG,1,2,16653760,5,00    | LOAD_OUT_OF_RANGE
          SG,1,2,16653760,5,04    | LOAD_OUT_OF_RANGE
          SG,1,2,,5,04            | READ
          SG,1,2,,5,00            | NOT_A_READING
          SG,1,2,3,,00            | READ
          SG,1,2,+3,-0,ff         | READ
          SG,65536,2,3,4,00       | NOT_A_READING
          SG,-1,2,3,4,00          | NOT_A_READING
          SG,1,4294967296,3,4,00  | NOT_A_READING
          SG,1,2,3.0,4,00         | NOT_A_READING
          SG,1,2,3,4e1,00         | NOT_A_READING
          SG,1,2,-,4,00           | NOT_A_READING
          SG,1,2,3,4,0            | NOT_A_READING
          SG,1,2,3,4,000          | NOT_A_READING
          SG,1,2,3,4,G0           | NOT_A_READING
          SG,1,2,3,4              | NOT_A_READING
          SG,1,2,3,4,00,          | NOT_A_READING
          SG,1,,3,4,00            | NOT_A_READING
          SG,,2,3,4,00            | NOT_A_READING
          SG,1,2, 3,4,00          | NOT_A_READING
          SG,1,2,3,1234567890123456789012,00 | NOT_A_READING
          SG,99999999999999999999,2,3,4,00   | NOT_A_READING
          SX,1,2,3,4,00           | NOT_A_READING
          """)
  void whatIsNotToTheLetterIsRefusedThoughItsCheckSumFits(String body, String outcome) {
    send(sealed(body));
    if (outcome.equals("READ")) {
      assertEquals(1, heard.readings.size());
      assertEquals(List.of(), heard.refusals);
    } else {
      assertEquals(List.of(Refusal.valueOf(outcome)), heard.refusals);
      assertEquals(List.of(), heard.readings);
    }
  }

  @Test
  void flagsTellWhatMayBeUsed() {
    send(
        line(1, 1, "8388607", "5", "01") + line(2, 2, "7", "5", "02") + line(3, 3, "7", "5", "04"));
    send(line(4, 4, "7", "", "08"));
    assertFalse(heard.readings.get(0).isLoadUsable());
    assertTrue(heard.readings.get(0).isGaugeUsable());
    assertTrue(heard.readings.get(1).isLoadUsable());
    assertFalse(heard.readings.get(1).isGaugeUsable());
    assertFalse(heard.readings.get(2).isLoadUsable());
    assertTrue(heard.readings.get(3).isLoadUsable());
    assertNull(heard.readings.get(3).gaugeSteps());
    assertTrue(heard.readings.get(3).has(Reading.HEAD_DROPPED));
  }

  @Test
  void checkSumInSmallLettersOrCutShortIsRefused() {
    String good = line(7, 100, "-11", "12", "00");
    String small =
        good.substring(0, good.indexOf('*')) + good.substring(good.indexOf('*')).toLowerCase();
    assertTrue(!small.equals(good), "the chosen line must have a letter in its check sum");
    send(small + good.substring(0, good.length() - 2) + "\n" + good.replace("\n", "0\n"));
    assertEquals(List.of(), heard.readings);
    assertEquals(3, heard.refusals.size());
  }

  @Test
  void aLongLineIsRefusedOnceAndTheNextIsRead() {
    send("x".repeat(121) + "\n" + line(1, 10));
    send("$SG," + "1".repeat(500_000) + "\n" + line(2, 20));
    assertEquals(List.of(Refusal.TOO_LONG, Refusal.TOO_LONG), heard.refusals);
    assertEquals(2, heard.readings.size());
    assertEquals(120, heard.refusedLines.get(1).length());
  }

  @Test
  void chatterOfAnotherDeviceIsCountedAndNeverUsed() {
    send("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n");
    send(line(1, 10) + "T=21.5C RH=45%\n\u0000\u00ff\u00fe\n" + line(2, 20) + "OK\n");
    assertEquals(2, heard.readings.size());
    assertEquals(4, heard.refusals.size());
    assertEquals("...", heard.refusedLines.get(2));
  }

  @Test
  void answersAreNoRefusals() {
    send("SAGWRIGHT,SG-1,0042,1.3\r\n0,\"No error\"\n-222,\"Data out of range\"\n");
    assertEquals(List.of(), heard.refusals);
    assertEquals(3, heard.answers.size());
    assertEquals(
        new HeadIdentity("SG-1", "0042", "1.3"), heard.answers.get(0).identity().orElseThrow());
    assertTrue(heard.answers.get(1).identity().isEmpty());
  }

  @Test
  void emptyLinesAreNothing() {
    send("\n\r\n" + line(1, 10) + "\n");
    assertEquals(1, heard.readings.size());
    assertEquals(List.of(), heard.refusals);
  }

  @Test
  void theTornLineAfterOpeningIsDroppedWithoutACountButAWholeOneIsRead() {
    WireReader opened = WireReader.fromOpening(heard);
    byte[] torn = ("204,3071,00*1234\n" + line(5, 50)).getBytes(StandardCharsets.US_ASCII);
    opened.accept(torn, torn.length);
    assertEquals(1, heard.readings.size());
    assertEquals(List.of(), heard.refusals);
    assertEquals(line(5, 50), heard.raw.toString(StandardCharsets.US_ASCII));
    byte[] whole = line(6, 60).getBytes(StandardCharsets.US_ASCII);
    WireReader.fromOpening(heard).accept(whole, whole.length);
    assertEquals(2, heard.readings.size());
  }

  @Test
  void lostReadingsAreGapsWithTheirCount() {
    send(line(10, 100_000) + line(11, 112_500) + line(15, 162_500) + line(16, 175_000));
    assertEquals(List.of(3), heard.gaps);
    assertEquals(0, heard.restarts);
  }

  @Test
  void wrappedCountersAreNoGapAndTimeRunsOn() {
    send(line(65534, 4_294_960_000L) + line(65535, 4_294_967_000L) + line(0, 6_704));
    send(line(1, 13_704));
    assertEquals(List.of(), heard.gaps);
    assertEquals(0, heard.restarts);
    assertEquals(List.of(0L, 7_000L, 14_000L, 21_000L), heard.micros);
    send(line(5, 41_704));
    assertEquals(List.of(3), heard.gaps);
  }

  @Test
  void longerRunsWrapTimeMoreThanOnce() {
    long step = 40_000_000L;
    for (int i = 0; i < 300; i++) {
      send(line(i, step * i % Reading.TIME_VALUES));
    }
    assertEquals(0, heard.restarts);
    assertEquals(step * 299, heard.micros.get(299));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # what was last seen of seq and time, what comes then
          200,   2500000,    0,     0
          200,   2500000,    0,     2512500
          200,   2500000,    201,   0
          60000, 750000000,  0,     0
          60000, 750000000,  0,     750012500
          43392, 3000000000, 0,     0
          43392, 3000000000, 43393, 0
          3,     37500,      3,     12500
          65530, 3000000000, 0,     0
          """)
  void aCounterThatStartsAnewIsARestart(int seq, long time, int newSeq, long newTime) {
    send(line(seq - 1, time - 12_500) + line(seq, time) + line(newSeq, newTime));
    assertEquals(1, heard.restarts);
    assertEquals(List.of(), heard.gaps);
    assertEquals(3, heard.readings.size());
    assertEquals(heard.micros.get(1), heard.micros.get(2), "time never falls");
  }

  @Test
  void manyLostReadingsWithTheirTimeAreAGap() {
    send(line(1, 12_500) + line(2, 25_000) + line(9_602, 120_025_000L));
    assertEquals(List.of(9_599), heard.gaps);
    assertEquals(0, heard.restarts);
  }

  @Test
  void aPauseOfTheHeadIsNoRestart() {
    send(line(1, 12_500) + line(2, 25_000) + line(3, 5_025_000));
    assertEquals(0, heard.restarts);
    assertEquals(List.of(), heard.gaps);
  }

  @Test
  void theSameLineTwiceIsUsedOnce() {
    send(line(1, 10) + line(1, 10) + line(2, 20));
    assertEquals(2, heard.readings.size());
    assertEquals(List.of(Refusal.REPEATED), heard.refusals);
  }
}
