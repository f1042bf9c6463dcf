package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.modulus.Instrument;
import sagwright.run.HandReadings;
import sagwright.run.Samples;
import sagwright.wood.SpeciesTable;

class SheetReaderTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final SheetReader reader = new SheetReader(SpeciesTable.published());

  @Test
  void everyValueOfAWholeSheetArrivesAsWritten() throws Exception {
    Sheet sheet = reader.read(DocumentTexts.WHOLE);
    assertEquals("25-014", sheet.tag());
    assertEquals("near size", sheet.stage());
    assertEquals(0.3, sheet.bowMm());
    assertEquals("European ash", sheet.shaft().species());
    assertEquals(405, sheet.shaft().massG());
    assertEquals(11.2, sheet.shaft().moisturePercent());
    assertEquals(SectionShape.ELLIPSE, sheet.shaft().taper().shape());
    assertEquals(1490, sheet.shaft().taper().lengthMm());
    assertEquals(
        List.of(new Station(0, 12.5, 12.48), Station.round(700, 20), Station.round(1490, 31)),
        sheet.shaft().taper().stations());
    assertArrayEquals(new boolean[] {true, false, false}, sheet.shaft().widthMeasured());
    assertEquals(new SetUp(100, 1100, 600, 610, 0), sheet.setUp().positions());
    assertEquals(0.5, sheet.setUp().positionUncertaintyMm());
    assertEquals(0.002, sheet.setUp().frameComplianceMmPerN());
    assertEquals(14, sheet.ratio().value());
    assertEquals(new Instrument(0.02, 0.1, 0.005, 0.05, 0), sheet.instrument());
    assertEquals("2026-03-02T09:00:00Z", sheet.startedAt());
    Samples samples = (Samples) sheet.readings();
    assertArrayEquals(new double[] {0, 0.0125, 0.025}, samples.timeS());
    assertArrayEquals(new double[] {0, 0.05, 0.1}, samples.loadN());
    assertArrayEquals(new double[] {0, 0.012, 0.024}, samples.deflectionMm());
    assertEquals(List.of(), sheet.assumed());
  }

  @Test
  void whatIsLeftOutIsAssumedAndSaidInTheOrderOfTheContract() throws Exception {
    Sheet sheet = reader.read(DocumentTexts.LEAST);
    assertNull(sheet.tag());
    assertNull(sheet.shaft().massG());
    assertEquals(1490, sheet.shaft().taper().lengthMm());
    assertEquals(0.02, sheet.shaft().diameterUncertaintyMm());
    assertEquals(0.5, sheet.shaft().diameterCommonShare());
    assertEquals(0.5, sheet.setUp().positionUncertaintyMm());
    assertEquals(0.002, sheet.setUp().frameComplianceMmPerN());
    assertEquals(14, sheet.ratio().value());
    assertEquals(Instrument.ASSUMED, sheet.instrument());
    assertEquals(3, ((HandReadings) sheet.readings()).size());
    assertEquals(
        List.of(
            "diameterUncertaintyMm",
            "positionUncertaintyMm",
            "frameComplianceMmPerN",
            "modulusToShearRatio",
            "loadUncertaintyN",
            "loadScaleUncertaintyPercent",
            "gaugeUncertaintyMm",
            "gaugeScaleUncertaintyPercent"),
        sheet.assumed());
  }

  // r of white ash 10.9 and of sugar maple 12.0: reference/species.csv, from the Wood Handbook
  @ParameterizedTest
  @CsvSource({"white ash, 10.9", "WHITE Ash, 10.9", "Sugar Maple, 12.0", "bog oak, 14"})
  void theRatioIsThatOfTheSpeciesWhereTheSheetGivesNone(String species, double ratio)
      throws Exception {
    String text = MutatedJson.of(DocumentTexts.WHOLE, "/shaft/species", '"' + species + '"');
    Sheet sheet = reader.read(MutatedJson.of(text, "/modulusToShearRatio", "REMOVE"));
    assertEquals(ratio, sheet.ratio().value());
    assertEquals(List.of("modulusToShearRatio"), sheet.assumed());
  }

  @Test
  void keysThatBeginWithXAreCarriedAlongAnywhere() throws Exception {
    String text = DocumentTexts.WHOLE;
    for (String at :
        new String[] {
          "/x-a", "/shaft/x-b", "/shaft/stations/0/x-c", "/setup/x-d", "/run/x-e", "/instrument/x-f"
        }) {
      text = MutatedJson.of(text, at, "{\"any\": [null, \"a  b\\\"c\"]}");
    }
    Sheet sheet = reader.read(text);
    assertEquals(MAPPER.readTree(text), MAPPER.readTree(sheet.json()));
    assertEquals(6, sheet.json().split("a  b", -1).length - 1);
  }

  @Test
  void theDocumentIsKeptOnOneLineWithItsNumbersAsWritten() throws Exception {
    Sheet sheet = reader.read(DocumentTexts.WHOLE.replace("near size", "near  \\\" size\\\\"));
    assertFalse(sheet.json().contains("\n"));
    assertEquals("near  \" size\\", sheet.stage());
    assertEquals("near  \" size\\", reader.read(sheet.json()).stage());
    assertEquals(true, sheet.json().contains("\"depthMm\":12.50,"), sheet.json());
  }

  @Test
  void aBlankNotTestedYetNeedsNeitherRunNorSetUp() throws Exception {
    String noRun = MutatedJson.of(DocumentTexts.WHOLE, "/run", "REMOVE");
    assertFalse(reader.read(noRun).hasRun());
    String noSetUp = MutatedJson.of(noRun, "/setup", "REMOVE");
    Sheet sheet = reader.read(noSetUp).requireTag();
    assertNull(sheet.setUp());
    assertEquals("setup", assertThrows(BadDocumentException.class, sheet::requireRun).key());
  }

  @ParameterizedTest
  @CsvSource({
    "25/014, true",
    "Ä-1_b.2, true",
    "12345678901234567890123456789012, true",
    "123456789012345678901234567890123, false",
    "'', false",
    "a b, false",
    "a:b, false"
  })
  void aTagIsLettersDigitsAndFourSigns(String tag, boolean good) throws Exception {
    Sheet sheet = reader.read(MutatedJson.of(DocumentTexts.WHOLE, "/shaft/tag", '"' + tag + '"'));
    if (good) {
      assertEquals(tag, sheet.requireTag().tag());
    } else {
      assertEquals("shaft.tag", assertThrows(BadDocumentException.class, sheet::requireTag).key());
    }
  }

  @Test
  void aSheetWithoutTagMayNotEnterAWorkshop() throws Exception {
    Sheet sheet = reader.read(DocumentTexts.LEAST);
    assertEquals("shaft.tag", assertThrows(BadDocumentException.class, sheet::requireTag).key());
  }

  @Test
  void aByteOrderMarkIsNoFault() throws Exception {
    byte[] bytes =
        ("\uFEFF" + DocumentTexts.LEAST).getBytes(java.nio.charset.StandardCharsets.UTF_8);
    assertEquals(1490, reader.read(DocumentText.of(bytes)).shaft().taper().lengthMm());
  }

  @Test
  void aSplicedShaftKeepsItsSplice() throws Exception {
    assertEquals(
        new sagwright.beam.Splice(1030, 4, 1120, 15500, 2),
        reader.read(DocumentTexts.SPLICED).shaft().splice());
  }
}
