package sagwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import sagwright.beam.Flexibility;
import sagwright.beam.SawnPiece;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.check.ReferenceTable;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluator;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.HandReadings;
import sagwright.wood.SpeciesTable;

/**
 * Oak on supports 3, 4, 5 and 6 ft apart, one load and one deflection a span, read to a sixteenth
 * or an eighth of an inch (T. Laslett, Timber and Timber Trees, table VIII;
 * reference/data/measured). Short spans hear shear: so the ratio r = E/G is in there, if the
 * reading lets it out.
 */
class ManySpansTest {
  private static final double EIGHTH_INCH_MM = 25.4 / 8;
  private static final double LENGTH_MM = 1900;

  /** What is taken for a wood that is not in the table (docs/contract.md, section 2). */
  private static final double USUAL_RATIO = ShearRatio.ASSUMED_FOR_UNKNOWN_SPECIES;

  /** One piece whose four spans agree: a modulus, and no ratio, which the reading drowns. */
  @Test
  void onePieceGivesItsModulusAndNoRatio() throws Exception {
    SurveyAnswer answer = survey("oak28");
    assertEquals(ModelKind.ONE, answer.proposed().kind());
    assertEquals(List.of(), answer.runsStandingOut());
    assertTrue(answer.models().stream().noneMatch(m -> m.kind() == ModelKind.RATIO));
    // the weighted mean leans on the long spans: 11032 and 10893 MPa, shear put back
    assertEquals(11050, answer.proposed().modulusAt(950).value(), 150);
  }

  /** Four pieces as repeats scatter far more than the reading explains, and the survey says so. */
  @Test
  void fourPiecesScatterMoreThanTheReadingAndTheSurveySaysSo() throws Exception {
    SurveyAnswer answer = survey("oak");
    assertEquals(16, answer.runs());
    assertEquals(12, answer.repeatability().degreesOfFreedom());
    assertTrue(
        answer.warnings().stream().anyMatch(w -> w instanceof SurveyWarning.PoorRepeats),
        answer.warnings().toString());
    assertTrue(answer.models().stream().noneMatch(m -> m.kind() == ModelKind.RATIO));
  }

  /**
   * Shear out of the spans, by the line of give on what bending and shear give: y/F = B/E + S/G.
   * The short spans look softer by a fifth, shear or not; the ratio that this makes is wide enough
   * to hold the usual one, and the modulus beside it is the long spans'.
   */
  @Test
  void theSpansOfAllOakHoldTheUsualRatio() throws Exception {
    List<double[]> rows = new ArrayList<>();
    for (CSVRecord row : ReferenceTable.rows("measured/oak_teak_many_spans_laslett.csv")) {
      if (row.get("piece").startsWith("oak")) {
        BendTest test = test(row);
        Flexibility f = Flexibility.of(test.shaft().taper(), test.setUp().positions());
        double load = number(row, "load_N");
        rows.add(
            new double[] {
              number(row, "deflection_mm"), load * f.bendingPerMm(), load * f.shearPerMm()
            });
      }
    }
    OLSMultipleLinearRegression line = new OLSMultipleLinearRegression();
    line.setNoIntercept(true);
    line.newSampleData(
        rows.stream().mapToDouble(r -> r[0]).toArray(),
        rows.stream().map(r -> new double[] {r[1], r[2]}).toArray(double[][]::new));
    double[] inverse = line.estimateRegressionParameters();
    double[][] covariance = line.estimateRegressionParametersVariance();
    double s2 = line.estimateErrorVariance();
    double ratio = inverse[1] / inverse[0];
    double u =
        Math.sqrt(
                s2
                    * (covariance[1][1]
                        + ratio * ratio * covariance[0][0]
                        - 2 * ratio * covariance[0][1]))
            / inverse[0];
    assertEquals(11626, 1 / inverse[0], 1);
    assertEquals(96.5, ratio, 0.1);
    assertTrue(u > USUAL_RATIO && Math.abs(ratio - USUAL_RATIO) < 2 * u, "u(r) = " + u);
  }

  private static SurveyAnswer survey(String pieces) throws Exception {
    Evaluator evaluator = new Evaluator(SpeciesTable.published());
    List<SurveyRun> runs = new ArrayList<>();
    for (CSVRecord row : ReferenceTable.rows("measured/oak_teak_many_spans_laslett.csv")) {
      if (row.get("piece").startsWith(pieces)) {
        BendTest test = test(row);
        runs.add(new SurveyRun(test, evaluator.evaluate(test)));
      }
    }
    return new SurveySolver().solve(SurveyProblem.of(runs));
  }

  /** One load only, and a line wants three: rest and half-way are put in. */
  private static BendTest test(CSVRecord row) {
    double depth = number(row, "depth_mm");
    double width = number(row, "width_mm");
    Taper piece = SawnPiece.of(new Station(0, depth, width), LENGTH_MM);
    double half = number(row, "span_mm") / 2;
    double middle = LENGTH_MM / 2;
    double load = number(row, "load_N");
    double sag = number(row, "deflection_mm");
    return new BendTest(
        new Shaft(piece, new boolean[] {true, true}, null, null, null, 0, 0, null),
        new BenchSetUp(new SetUp(middle - half, middle + half, middle, middle, 0), 0, 0, 0),
        new Instrument(0, 0, EIGHTH_INCH_MM / Math.sqrt(12), 0, 0),
        new ShearRatio(USUAL_RATIO, 0),
        new HandReadings(new double[] {0, load / 2, load}, new double[] {0, sag / 2, sag}));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
