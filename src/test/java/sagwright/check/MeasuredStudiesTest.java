package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import sagwright.check.CalibrationPoint.Direction;
import sagwright.uncertainty.GrubbsTest;

/** Measurements of others against their authors' figures: reference/data/measured. */
class MeasuredStudiesTest {
  /**
   * NIST's load cell (StRD, Pontius), whose certified curve is a parabola. What the straight line
   * leaves over must hold that parabola's B2: its part along what a straight line leaves of x²
   * (Frisch and Waugh 1933).
   */
  @Test
  void theStraightLinesResidualsHoldTheCertifiedParabola() throws Exception {
    List<CSVRecord> rows = ReferenceTable.rows("measured/load_cell_calibration_nist_pontius.csv");
    List<CalibrationPoint> points = new ArrayList<>();
    List<CalibrationPoint> squares = new ArrayList<>();
    for (CSVRecord row : rows) {
      double load = number(row, "load_lb");
      points.add(new CalibrationPoint(number(row, "reading"), load, Direction.UP));
      squares.add(new CalibrationPoint(load * load, load, Direction.UP));
    }
    double[] left = LineCalibration.of(points).residuals();
    double[] leftOfSquares = LineCalibration.of(squares).residuals();
    double products = 0;
    double norm = 0;
    for (int i = 0; i < left.length; i++) {
      products += left[i] * leftOfSquares[i];
      norm += leftOfSquares[i] * leftOfSquares[i];
    }
    double certified = -0.316081871345029e-14;
    assertEquals(certified, products / norm, 1e-10 * Math.abs(certified));
    double squaresLeft = Arrays.stream(left).map(e -> e * e).sum() - products * products / norm;
    assertEquals(0.205177424076185e-3, Math.sqrt(squaresLeft / (40 - 3)), 1e-11);
  }

  /** Fourteen parts, each under two calipers (EngrExpt, caliper; no published answer). */
  @Test
  void noPairOfCaliperReadingsStandsOut() throws IOException {
    double[] one = ReferenceTable.column("measured/caliper_pairs.csv", "caliperA");
    double[] other = ReferenceTable.column("measured/caliper_pairs.csv", "caliperB");
    double[] differences = new double[one.length];
    Arrays.setAll(differences, i -> one[i] - other[i]);
    GrubbsTest furthest = GrubbsTest.of(differences, 0.05);
    assertFalse(furthest.standsOut());
    // worked by hand from the printed pairs: mean −0.006/14, furthest 0.002, s 0.0012225
    assertEquals((0.002 + 0.006 / 14) / 0.0012225, furthest.statistic(), 1e-3);
    assertEquals(2.507, furthest.limit(), 1e-3);
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
