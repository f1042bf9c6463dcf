package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.bench.Calibration;

class CalibrationReaderTest {
  @Test
  void aCalibrationArrivesAsWrittenAndReadsBackTheSame() throws Exception {
    Calibration calibration = CalibrationReader.read(DocumentTexts.CALIBRATION);
    assertEquals(Instant.parse("2026-03-02T09:00:00Z"), calibration.made());
    assertEquals(365, calibration.validDays());
    assertEquals("KM", calibration.by());
    assertEquals(2.5e-5, calibration.load().newtonPerCount());
    assertEquals(25, calibration.gauge().greatestMm());
    assertEquals(0.002, calibration.frameComplianceMmPerN());
    assertEquals(calibration, CalibrationReader.read(CalibrationWriter.write(calibration)));
  }

  @ParameterizedTest(name = "{0} := {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "/format | \"sagwright-sheet/1\" | format",
        "/made | REMOVE | made",
        "/made | \"2 March\" | made",
        "/made | 20260302 | made",
        "/validDays | -1 | validDays",
        "/validDays | 0.5 | validDays",
        "/validDays | 1e9 | validDays",
        "/validDays | null | validDays",
        "/by | 7 | by",
        "/load | null | load",
        "/load/newtonPerCount | 0 | load.newtonPerCount",
        "/load/newtonPerCount | REMOVE | load.newtonPerCount",
        "/load/newtonPerCount | 1e999 | load.newtonPerCount",
        "/load/scaleUncertaintyPercent | -0.1 | load.scaleUncertaintyPercent",
        "/load/uncertaintyN | \"0.02\" | load.uncertaintyN",
        "/load/greatestN | 0 | load.greatestN",
        "/load/gain | 128 | load.gain",
        "/gauge/mmPerStep | 0 | gauge.mmPerStep",
        "/gauge/mmPerStep | true | gauge.mmPerStep",
        "/gauge/uncertaintyMm | -0.005 | gauge.uncertaintyMm",
        "/gauge/springNPerMm | -1 | gauge.springNPerMm",
        "/frameComplianceMmPerN | -0.002 | frameComplianceMmPerN",
        "/frameComplianceUncertaintyMmPerN | -1 | frameComplianceUncertaintyMmPerN",
        "/newtonPerCount | 1 | newtonPerCount"
      })
  void theKeyOfTheFaultIsNamed(String pointer, String value, String key) {
    String text = MutatedJson.of(DocumentTexts.CALIBRATION, pointer, value);
    assertEquals(key, refused(text).key());
  }

  @Test
  void eitherFactorMayBeNegative() throws Exception {
    String text = MutatedJson.of(DocumentTexts.CALIBRATION, "/load/newtonPerCount", "-2.5e-5");
    assertEquals(-2.5e-5, CalibrationReader.read(text).load().newtonPerCount());
  }

  @Test
  void aCalibrationInTheMakingLacksAPartAndRecordsNoRun() throws Exception {
    String text = MutatedJson.of(DocumentTexts.CALIBRATION, "/gauge", "REMOVE");
    Calibration half = CalibrationReader.read(text);
    assertEquals(half, CalibrationReader.read(CalibrationWriter.write(half)));
    BadDocumentException bad =
        assertThrows(BadDocumentException.class, () -> CalibrationReader.requireComplete(half));
    assertEquals("gauge", bad.key());
  }

  @ParameterizedTest(name = "{0} := {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "/loadMm | 1200 | loadMm",
        "/supportBMm | 1490.5 | supportBMm",
        "/frameComplianceMmPerN | -1 | frameComplianceMmPerN",
        "/supportBMm | REMOVE | supportBMm",
        "/shaft | {} | shaft"
      })
  void faultsOfABareSetUpAreNamed(String pointer, String value, String key) {
    String good = "{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,\"gaugeMm\":600}";
    String text = MutatedJson.of(good, pointer, value);
    BadDocumentException bad =
        assertThrows(BadDocumentException.class, () -> SetUpReader.read(text, 1490));
    assertEquals(key, bad.key());
  }

  @Test
  void theSetUpsFrameGoesBeforeTheCalibrations() throws Exception {
    String bare = "{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,\"gaugeMm\":600}";
    assertEquals(0.003, SetUpReader.read(bare, 1490).onBench(0.003, 0.1).frameComplianceMmPerN());
    String own = MutatedJson.of(bare, "/frameComplianceMmPerN", "0.001");
    var setUp = SetUpReader.read(own, 1490).onBench(0.003, 0.1);
    assertEquals(0.001, setUp.frameComplianceMmPerN());
    assertEquals(0, setUp.frameComplianceUncertaintyMmPerN());
  }

  private static BadDocumentException refused(String text) {
    return assertThrows(BadDocumentException.class, () -> CalibrationReader.read(text));
  }
}
