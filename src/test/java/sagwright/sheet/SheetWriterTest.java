package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.run.Samples;
import sagwright.wood.SpeciesTable;

class SheetWriterTest {
  private final SheetReader reader = new SheetReader(SpeciesTable.published());

  @ParameterizedTest
  @ValueSource(strings = {DocumentTexts.WHOLE, DocumentTexts.LEAST})
  void whatWasWrittenReadsBackTheSame(String text) throws Exception {
    roundTrip(reader.read(text));
  }

  @Test
  void aSplicedShaftAndABlankNotTestedReadBackTheSame() throws Exception {
    roundTrip(reader.read(DocumentTexts.SPLICED));
    roundTrip(
        reader.read(
            MutatedJson.of(
                MutatedJson.of(DocumentTexts.WHOLE, "/run", "REMOVE"), "/setup", "REMOVE")));
  }

  @Test
  void readingsComeBackBitForBit() throws Exception {
    Random random = new Random(20260302);
    double[] timeS = new double[20_000];
    double[] loadN = new double[timeS.length];
    double[] deflectionMm = new double[timeS.length];
    for (int i = 0; i < timeS.length; i++) {
      timeS[i] = i / 230.0;
      loadN[i] = anyDouble(random);
      deflectionMm[i] = anyDouble(random);
    }
    loadN[7] = 2e-3; // Double.toString of Java 17 is longer than it need be here and below
    loadN[8] = 2.0E-3 * 1e-300;
    loadN[9] = -0.0;
    Sheet sheet = reader.read(DocumentTexts.WHOLE);
    Sheet long_ = with(sheet, new Samples(timeS, loadN, deflectionMm));
    Samples back = (Samples) reader.read(SheetWriter.write(long_)).readings();
    assertSameBits(timeS, back.timeS());
    assertSameBits(loadN, back.loadN());
    assertSameBits(deflectionMm, back.deflectionMm());
  }

  @Test
  void doublesAreWrittenInTheirShortestForm() {
    // 2E23 and 2.0E-3 are classic cases where older Java wrote more digits than needed
    // (JDK-4511638)
    assertEquals(
        "{\"a\":2.0E23,\"b\":0.002,\"c\":12340.0}",
        new JsonLine().put("a", 2e23).put("b", 2e-3).put("c", 12340.0).toString());
    assertEquals("{\"a\":null}", new JsonLine().put("a", Double.NaN).toString());
  }

  private void roundTrip(Sheet sheet) throws Exception {
    String written = SheetWriter.write(sheet);
    assertFalse(written.contains("\n"));
    Sheet back = reader.read(written);
    assertEquals(written, SheetWriter.write(back));
    assertEquals(sheet.assumed(), back.assumed());
    assertEquals(sheet.tag(), back.tag());
    assertEquals(sheet.setUp(), back.setUp());
    assertEquals(sheet.ratio(), back.ratio());
    assertEquals(sheet.instrument(), back.instrument());
    assertEquals(sheet.startedAt(), back.startedAt());
    assertEquals(sheet.shaft().taper().stations(), back.shaft().taper().stations());
    assertArrayEquals(sheet.shaft().widthMeasured(), back.shaft().widthMeasured());
    assertEquals(sheet.shaft().splice(), back.shaft().splice());
    assertEquals(sheet.hasRun(), back.hasRun());
  }

  private static Sheet with(Sheet sheet, Samples samples) {
    return new Sheet(
        sheet.tag(),
        sheet.stage(),
        sheet.bowMm(),
        sheet.shaft(),
        sheet.setUp(),
        sheet.ratio(),
        sheet.instrument(),
        samples,
        sheet.startedAt(),
        sheet.assumed(),
        null);
  }

  private static double anyDouble(Random random) {
    double value;
    do {
      value = Double.longBitsToDouble(random.nextLong());
    } while (!(Math.abs(value) <= 1e18));
    return value;
  }

  private static void assertSameBits(double[] expected, double[] actual) {
    assertEquals(expected.length, actual.length);
    for (int i = 0; i < expected.length; i++) {
      assertEquals(
          Double.doubleToRawLongBits(expected[i]),
          Double.doubleToRawLongBits(actual[i]),
          "[" + i + "]");
    }
  }
}
