package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static sagwright.check.LineCalibrationTest.down;
import static sagwright.check.LineCalibrationTest.up;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class CalibrationTermsTest {
  /** Reference formulas, 10: indicated 100.0 N, true 99.35, 99.52, 99.61 N. */
  @Test
  void givesErrorAndRepeatabilityOfTheWorkedExample() {
    List<Double> errors =
        List.of(
            CalibrationTerms.relativeErrorPercent(100, 99.35),
            CalibrationTerms.relativeErrorPercent(100, 99.52),
            CalibrationTerms.relativeErrorPercent(100, 99.61));
    assertEquals(0.654252642174, errors.get(0), 1e-12);
    assertEquals(0.482315112540, errors.get(1), 1e-12);
    assertEquals(0.391526955125, errors.get(2), 1e-12);
    assertEquals(0.262725687049, CalibrationTerms.spread(errors), 1e-12);
    assertEquals(
        ForceClass.ONE, ForceClass.of(new CalibrationTerms(errors.get(0), null, null, null)));
    assertEquals(
        ForceClass.HALF,
        ForceClass.of(new CalibrationTerms(0, CalibrationTerms.spread(errors), null, null)));
  }

  /** ISO 7500-1:2018, class limits. */
  @Test
  void hasThePublishedLimits() throws IOException {
    List<CSVRecord> rows = ReferenceTable.rows("iso7500-1-limits.csv");
    assertEquals(4, rows.size());
    for (int i = 0; i < rows.size(); i++) {
      CSVRecord row = rows.get(i);
      ForceClass force = ForceClass.values()[i];
      assertEquals(Double.parseDouble(row.get("class")), force.number());
      assertEquals(Double.parseDouble(row.get("q")), force.errorLimitPercent());
      assertEquals(Double.parseDouble(row.get("b")), force.repeatabilityLimitPercent());
      assertEquals(Double.parseDouble(row.get("v")), force.reversibilityLimitPercent());
      assertEquals(Double.parseDouble(row.get("f0")), force.zeroLimitPercent());
    }
  }

  @Test
  void theWorstTermMakesTheClass() {
    assertEquals(ForceClass.HALF, ForceClass.of(new CalibrationTerms(0.5, 0.5, 0.75, 0.05)));
    assertEquals(ForceClass.ONE, ForceClass.of(new CalibrationTerms(0.1, 0.1, 0.1, 0.06)));
    assertEquals(ForceClass.TWO, ForceClass.of(new CalibrationTerms(0.1, 1.1, 0.1, 0.01)));
    assertEquals(ForceClass.THREE, ForceClass.of(new CalibrationTerms(0.1, 0.1, 4.5, 0.01)));
    assertNull(ForceClass.of(new CalibrationTerms(0.1, 0.1, 4.6, 0.01)));
    assertNull(ForceClass.of(new CalibrationTerms(0.1, 0.1, 0.1, 0.31)));
  }

  @Test
  void pointsBelowATenthCountForZeroAlone() {
    CalibrationTerms terms =
        CalibrationTerms.of(
            List.of(up(0, 0), up(0.99, 0), up(1, 0), up(10, 0), down(0.99, 0), down(0, 0)),
            new double[] {0, 2, 1.01, 10, 3, 0.02});
    assertEquals(1, terms.greatestErrorPercent(), 1e-12);
    assertNull(terms.reversibilityPercent());
    assertEquals(0.2, terms.zeroReturnPercent(), 1e-12);
  }

  /** Ten masses of a tenth: 0.1·max is not exactly the smallest mass in binary. */
  @Test
  void theTenthItselfCounts() {
    LocalGravity gravity = new LocalGravity(9.8123);
    double greatest = gravity.loadN(3000);
    double tenth = gravity.loadN(300);
    CalibrationTerms terms =
        CalibrationTerms.of(
            List.of(up(tenth, 0), up(greatest, 0)), new double[] {tenth * 1.02, greatest});
    assertEquals(2, terms.greatestErrorPercent(), 1e-9);
  }

  @Test
  void repeatabilityLiesBetweenEqualPointsOfOneDirection() {
    CalibrationTerms terms =
        CalibrationTerms.of(
            List.of(up(0, 0), up(10, 0), down(10, 0), down(0, 0), up(0, 0), up(10, 0), down(10, 0)),
            new double[] {0, 10.00, 10.05, 0, 0, 10.02, 10.06});
    assertEquals(0.2, terms.repeatabilityPercent(), 1e-9);
    assertEquals(0.45, terms.reversibilityPercent(), 1e-9); // means 10.01 and 10.055
  }

  @Test
  void everyRoundsZeroIsReckonedFromItsOwnStart() {
    CalibrationTerms terms =
        CalibrationTerms.of(
            List.of(up(0, 0), up(10, 0), down(0, 0), up(0, 0), up(10, 0), down(0, 0)),
            new double[] {0, 10, 0.01, 0.5, 10, 0.47});
    assertEquals(0.3, terms.zeroReturnPercent(), 1e-9);
  }

  @Test
  void leavesOutWhatWasNotMeasured() {
    CalibrationTerms terms =
        CalibrationTerms.of(List.of(up(5, 0), up(10, 0), down(0, 0)), new double[] {5, 10, 0.1});
    assertNull(terms.repeatabilityPercent());
    assertNull(terms.reversibilityPercent());
    assertNull(terms.zeroReturnPercent());
  }
}
