package sagwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluator;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.HandReadings;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;

/**
 * One survey worked out a second time with SciPy (adaptive quadrature, general least squares,
 * differences for every derivative): survey_reference.py beside its answer.
 */
class SurveyAgainstScipyTest {
  private static final double[][] SET_UPS = {
    {100, 1100, 600, 600},
    {50, 1450, 700, 700},
    {50, 650, 350, 330},
    {700, 1450, 1050, 1050},
    {400, 1000, 700, 700},
    {60, 460, 260, 260},
    {1000, 1450, 1200, 1230}
  };
  private static final double[] STIFFNESS = {
    4.0091, 1.8733, 9.4628, 27.972, 24.559, 23.769, 136.66
  };

  private static Map<String, double[]> reference;
  private static List<SurveyRun> runs;
  private static SurveyAnswer answer;

  @BeforeAll
  static void survey() throws Exception {
    reference = new HashMap<>();
    for (String line :
        Files.readAllLines(Path.of("src/test/resources/sagwright/survey/survey_reference.csv"))) {
      if (!line.startsWith("#")) {
        String[] cells = line.split(",");
        double[] values = new double[cells.length - 2];
        for (int i = 0; i < values.length; i++) {
          values[i] = Double.parseDouble(cells[i + 2]);
        }
        reference.put(cells[0] + " " + cells[1], values);
      }
    }
    List<Station> stations =
        List.of(
            new Station(0, 12.50, 12.48),
            new Station(400, 17.40, 17.50),
            new Station(800, 22.60, 22.50),
            new Station(1200, 27.50, 27.60),
            new Station(1490, 31.00, 31.10));
    Shaft shaft =
        new Shaft(
            new Taper(SectionShape.ELLIPSE, stations, 1490),
            new boolean[] {true, true, true, true, true},
            null,
            null,
            null,
            0.02,
            0.5,
            null);
    runs = new ArrayList<>();
    for (int i = 0; i < STIFFNESS.length; i++) {
      double[] p = SET_UPS[i];
      BendTest test =
          new BendTest(
              shaft,
              new BenchSetUp(new SetUp(p[0], p[1], p[2], p[3], 0), 0.5, 0.002, 0),
              Instrument.ASSUMED,
              new ShearRatio(14, 0),
              straightLine(STIFFNESS[i]));
      runs.add(new SurveyRun(test, new Evaluator(SpeciesTable.published()).evaluate(test)));
    }
    answer = new SurveySolver().solve(SurveyProblem.of(runs));
  }

  private static HandReadings straightLine(double stiffness) {
    double[] deflections = new double[9];
    double[] loads = new double[9];
    for (int i = 0; i < 9; i++) {
      deflections[i] = i;
      loads[i] = stiffness * i;
    }
    return new HandReadings(loads, deflections);
  }

  private static SurveyModel model(ModelKind kind) {
    return answer.models().stream().filter(m -> m.kind() == kind).findFirst().orElseThrow();
  }

  private static void assertNear(String key, Estimate found) {
    double[] expected = reference.get(key);
    assertEquals(expected[0], found.value(), 1e-6 * expected[0], key);
    assertEquals(expected[1], found.standardUncertainty(), 1e-4 * expected[1], key + " u");
  }

  private static void assertChiSquared(ModelKind kind) {
    double expected = reference.get(kind.word() + " chiSquared")[0];
    assertEquals(expected, model(kind).chiSquared(), 1e-5 * expected, kind.word());
  }

  @Test
  void theRunsThemselvesAgree() {
    for (int i = 0; i < runs.size(); i++) {
      double[] expected = reference.get("run " + i);
      assertEquals(expected[0], runs.get(i).evaluation().modulusMPa(), 1e-9 * expected[0]);
      assertEquals(
          expected[1],
          SurveyGround.of(runs).independentMPa()[i],
          1e-5 * expected[1],
          "independent uncertainty of run " + i);
    }
  }

  @Test
  void oneModulusAgrees() {
    assertChiSquared(ModelKind.ONE);
    assertNear("one 0", model(ModelKind.ONE).modulusAt(0));
  }

  /** These runs give an r below 0, which no wood has: the fit agrees, and is not shown. */
  @Test
  void modulusAndRatioAgreeAndAreLeftOut() {
    SurveyGround ground = SurveyGround.of(runs);
    FittedModel fitted = ground.fit(ModelShape.RATIO);
    RealMatrix covariance = fitted.estimator().covariance(ground.covarianceMPa2(ModelShape.RATIO));
    for (int i = 0; i < 2; i++) {
      double[] expected = reference.get("ratio " + i);
      assertEquals(expected[0], fitted.fit().parameters()[i], 1e-5 * Math.abs(expected[0]));
      assertEquals(expected[1], Math.sqrt(covariance.getEntry(i, i)), 1e-4 * expected[1]);
    }
    double chiSquared = reference.get("ratio chiSquared")[0];
    assertEquals(chiSquared, fitted.fit().chiSquared(), 1e-6 * chiSquared);
    assertTrue(answer.models().stream().noneMatch(m -> m.kind() == ModelKind.RATIO));
  }

  @Test
  void theStraightModulusAgrees() {
    assertChiSquared(ModelKind.STRAIGHT);
    assertNear("straight 0", model(ModelKind.STRAIGHT).modulusAt(0));
    assertNear("straight 1", model(ModelKind.STRAIGHT).modulusAt(1490));
  }

  /** The border is found by compliances, χ² then by moduli: its least is met to a thousandth. */
  @Test
  void twoPiecesAgree() {
    SurveyModel pieces = model(ModelKind.PIECES);
    assertEquals(2, pieces.along().parameterCount());
    double expected = reference.get("pieces chiSquared")[0];
    assertEquals(expected, pieces.chiSquared(), 1e-3 * expected);
    assertEquals(reference.get("pieces border")[0], pieces.along().breaksMm()[0], 5);
  }
}
