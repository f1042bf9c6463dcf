package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import sagwright.bench.Calibration;
import sagwright.bench.LoadCalibration;
import sagwright.uncertainty.Estimate;

class CalibrationEditTest {
  private static final LoadCalibration LOAD = new LoadCalibration(-1.25e-5, 0.2, 0.0123, 49.0525);

  @Test
  void aNewLoadReplacesTheOldOneAndNothingElse() throws Exception {
    Calibration before = CalibrationReader.read(DocumentTexts.CALIBRATION);
    String text = CalibrationEdit.of(DocumentTexts.CALIBRATION).withLoad(LOAD).text();
    Calibration after = CalibrationReader.read(text);
    assertEquals(LOAD, after.load());
    assertEquals(
        new Calibration(
            before.made(),
            before.validDays(),
            before.by(),
            LOAD,
            before.gauge(),
            before.frameComplianceMmPerN(),
            before.frameComplianceUncertaintyMmPerN()),
        after);
  }

  @Test
  void aNewGaugeKeepsTheStemsSpring() throws Exception {
    String sprung = MutatedJson.of(DocumentTexts.CALIBRATION, "/gauge/springNPerMm", "0.04");
    var line = new CalibrationEdit.GaugeLine(0.00099, 0.01, 0.002, 12);
    Calibration after = CalibrationReader.read(CalibrationEdit.of(sprung).withGauge(line).text());
    assertEquals(0.04, after.gauge().springNPerMm());
    assertEquals(0.00099, after.gauge().mmPerStep());
    assertEquals(0.01, after.gauge().scaleUncertaintyPercent());
    assertEquals(0.002, after.gauge().uncertaintyMm());
    assertEquals(12, after.gauge().greatestMm());
  }

  @Test
  void keysOfOthersStayWhereTheyAre() throws Exception {
    String marked =
        MutatedJson.of(DocumentTexts.CALIBRATION, "/x-room", "\"back\"")
            .replace("\"greatestN\"", "\"x-cell\": [1, 2], \"greatestN\"");
    String text = CalibrationEdit.of(marked).withLoad(LOAD).text();
    assertTrue(text.contains("\"x-room\" : \"back\""), text);
    assertTrue(text.contains("\"x-cell\" : [ 1, 2 ]"), text);
    assertEquals(LOAD, CalibrationReader.read(text).load());
  }

  @Test
  void aCalibrationIsBegunWithOnePart() throws Exception {
    Instant now = Instant.parse("2026-03-02T09:00:00.123Z");
    String text = CalibrationEdit.begin(now).withFrame(new Estimate(0.0021, 0.0001)).text();
    Calibration begun = CalibrationReader.read(text);
    assertEquals(Instant.parse("2026-03-02T09:00:00Z"), begun.made());
    assertEquals(365, begun.validDays());
    assertEquals(0.0021, begun.frameComplianceMmPerN());
    assertEquals(0.0001, begun.frameComplianceUncertaintyMmPerN());
    assertFalse(begun.isComplete());
    assertEquals(
        0,
        CalibrationReader.read(
                CalibrationEdit.begin(now)
                    .withGauge(new CalibrationEdit.GaugeLine(0.001, 0, 0.001, 10))
                    .text())
            .gauge()
            .springNPerMm());
  }

  @Test
  void whatIsNoFaultlessCalibrationIsNotEdited() {
    assertEquals(
        "load.newtonPerCount",
        assertThrows(
                BadDocumentException.class,
                () ->
                    CalibrationEdit.of(
                        MutatedJson.of(DocumentTexts.CALIBRATION, "/load/newtonPerCount", "0")))
            .key());
    assertThrows(BadDocumentException.class, () -> CalibrationEdit.of(""));
  }
}
