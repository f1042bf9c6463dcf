package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.check.CalibrationPoint.Direction;

class LineCalibrationTest {
  /** NIST StRD, Norris: certified slope, intercept, their uncertainty, residual deviation. */
  @Test
  void meetsTheCertifiedLineOfNorris() throws Exception {
    LineCalibration line =
        LineCalibration.of(rising(ReferenceTable.rows("nist-norris.csv"), "y", "x"));
    assertEquals(1.00211681802045, line.slope(), 1e-13);
    assertEquals(-0.262323073774029, line.intercept(), 1e-11);
    assertEquals(0.429796848199937e-3, line.slopeStdUncertainty(), 1e-15);
    assertEquals(0.884796396144373, line.residualStd(), 1e-12);
    assertEquals(
        100 * 0.429796848199937e-3 / 1.00211681802045, line.scaleUncertaintyPercent(), 1e-12);
  }

  /** NIST's load cell (StRD, Pontius), the straight line through it in exact fractions. */
  @Test
  void meetsTheStraightLineThroughAPublishedLoadCell() throws Exception {
    LineCalibration line =
        LineCalibration.of(
            rising(
                ReferenceTable.rows("measured/load_cell_calibration_nist_pontius.csv"),
                "reading",
                "load_lb"));
    assertEquals(7.221025814536339e-07, line.slope(), 1e-19);
    assertEquals(0.006149684210526516, line.intercept(), 1e-14);
    double greatest = Arrays.stream(line.residuals()).map(Math::abs).max().orElseThrow();
    assertEquals(0.0042750714285716, greatest, 1e-14);
    assertEquals(2.16844, line.greatestPoint());
  }

  @Test
  void aPerfectInstrumentHasNoErrors() throws PoorPointsException {
    LineCalibration line =
        LineCalibration.of(List.of(up(0, 100), up(1, 300), up(2, 500), down(1, 300), down(0, 100)));
    assertEquals(0.005, line.slope(), 1e-15);
    assertEquals(0, line.residualStd(), 1e-12);
    assertEquals(0, line.terms().greatestErrorPercent(), 1e-9);
    assertEquals(ForceClass.HALF, line.forceClass());
  }

  /** Load falls where counts rise: the factor is negative, the errors are the same. */
  @Test
  void takesAnInstrumentThatCountsBackwards() throws PoorPointsException {
    List<CalibrationPoint> forward =
        List.of(up(0, 3), up(5, 1010), up(10, 2000), down(5, 1020), down(0, 8));
    List<CalibrationPoint> backward =
        forward.stream()
            .map(p -> new CalibrationPoint(p.applied(), -p.reading(), p.direction()))
            .toList();
    LineCalibration one = LineCalibration.of(forward);
    LineCalibration other = LineCalibration.of(backward);
    assertEquals(-one.slope(), other.slope(), 1e-15);
    assertEquals(one.slopeStdUncertainty(), other.slopeStdUncertainty(), 1e-15);
    assertEquals(one.terms().greatestErrorPercent(), other.terms().greatestErrorPercent(), 1e-12);
    assertEquals(one.terms().zeroReturnPercent(), other.terms().zeroReturnPercent(), 1e-12);
  }

  /** Worked by hand: 10 up, 10.2 down at the middle of 20; the line is the one through all. */
  @Test
  void takesTheTermsAboutItsOwnLine() throws PoorPointsException {
    List<CalibrationPoint> points =
        List.of(up(0, 0), up(10, 1000), up(20, 2000), down(20, 2000), down(10, 1020), down(0, 10));
    LineCalibration line = LineCalibration.of(points);
    double n = 6;
    double sx = 6030;
    double sxx = 1000.0 * 1000 + 2 * 2000.0 * 2000 + 1020.0 * 1020 + 100;
    double sxy = 10.0 * 1000 + 2 * 20 * 2000 + 10 * 1020;
    double slope = (n * sxy - sx * 60) / (n * sxx - sx * sx);
    assertEquals(slope, line.slope(), 1e-15);
    double intercept = (60 - slope * sx) / n;
    double upError = 100 * (intercept + 1000 * slope - 10) / 10;
    double downError = 100 * (intercept + 1020 * slope - 10) / 10;
    double topError = 100 * (intercept + 2000 * slope - 20) / 20;
    double worst = Math.max(Math.abs(topError), Math.max(Math.abs(upError), Math.abs(downError)));
    assertEquals(worst, line.terms().greatestErrorPercent(), 1e-10);
    assertEquals(downError - upError, line.terms().reversibilityPercent(), 1e-10);
    assertEquals(100 * 10 * slope / 20, line.terms().zeroReturnPercent(), 1e-10);
    assertNull(line.terms().repeatabilityPercent());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 0 1000 2000|2|a line wants 3 points or more, here are 2",
        "5 5 5|3|all points are alike",
        "0 5 10|0|all readings are alike",
      })
  void refusesPointsThroughWhichNoLineGoes(String applied, int kind, String said) {
    List<CalibrationPoint> points = new ArrayList<>();
    for (String at : applied.split(" ")) {
      points.add(up(Double.parseDouble(at), kind == 0 ? 7 : points.size()));
    }
    List<CalibrationPoint> taken = kind == 2 ? points.subList(0, 2) : points;
    PoorPointsException refused =
        assertThrows(PoorPointsException.class, () -> LineCalibration.of(taken));
    assertTrue(refused.getMessage().startsWith(said), refused.getMessage());
  }

  @Test
  void refusesReadingsThatFollowNothing() {
    assertThrows(
        PoorPointsException.class,
        () -> LineCalibration.of(List.of(up(0, 1), up(10, 2), up(0, 3))));
  }

  private static List<CalibrationPoint> rising(List<CSVRecord> rows, String applied, String reading)
      throws IOException {
    return rows.stream()
        .map(row -> up(Double.parseDouble(row.get(applied)), Double.parseDouble(row.get(reading))))
        .toList();
  }

  static CalibrationPoint up(double applied, double reading) {
    return new CalibrationPoint(applied, reading, Direction.UP);
  }

  static CalibrationPoint down(double applied, double reading) {
    return new CalibrationPoint(applied, reading, Direction.DOWN);
  }
}
