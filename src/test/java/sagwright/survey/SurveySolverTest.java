package sagwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.beam.SetUp;
import sagwright.modulus.Instrument;
import sagwright.run.PoorRunException;
import sagwright.uncertainty.Contribution;
import sagwright.uncertainty.Estimate;

class SurveySolverTest {
  private static SurveyModel model(SurveyAnswer answer, ModelKind kind) {
    return answer.models().stream().filter(m -> m.kind() == kind).findFirst().orElseThrow();
  }

  private static List<ModelKind> kinds(SurveyAnswer answer) {
    return answer.models().stream().map(SurveyModel::kind).toList();
  }

  private static double independentMPa(SurveyRun run) {
    return Math.sqrt(
        run.evaluation().budget().contributions().stream()
            .filter(
                c -> List.of("line", "supportA", "supportB", "load", "gauge").contains(c.source()))
            .mapToDouble(Contribution::standardUncertainty)
            .map(u -> u * u)
            .sum());
  }

  @Test
  void oneModulusIsTheWeightedMeanOfWhatTheRunsShowed()
      throws PoorRunException, DifferentShaftsException {
    List<SurveyRun> runs = new InventedShaft(3).test(InventedShaft.EIGHT);
    double weights = 0;
    double sum = 0;
    for (SurveyRun run : runs) {
      double weight = 1 / Math.pow(independentMPa(run), 2);
      weights += weight;
      sum += weight * run.evaluation().modulusMPa();
    }
    double chiSquared = 0;
    for (SurveyRun run : runs) {
      double z = (run.evaluation().modulusMPa() - sum / weights) / independentMPa(run);
      chiSquared += z * z;
    }
    SurveyModel one = model(new SurveySolver().solve(SurveyProblem.of(runs)), ModelKind.ONE);
    assertEquals(sum / weights, one.modulusAt(700).value(), 1e-9 * 12000);
    assertEquals(chiSquared, one.chiSquared(), 1e-9 * chiSquared);
    assertEquals(chiSquared + 2 + 4.0 / 6, one.aicc(), 1e-9 * one.aicc());
    double scales = 12000 * Math.hypot(0.001, 0.0005);
    assertTrue(
        one.modulusAt(700).standardUncertainty() > Math.hypot(scales, 1 / Math.sqrt(weights)),
        "scales and diameters come on top");
  }

  @Test
  void withoutErrorsAStraightModulusComesBack() throws PoorRunException {
    SurveyAnswer answer =
        new InventedShaft(1).rising(0.15).withoutErrors().survey(InventedShaft.EIGHT);
    assertEquals(ModelKind.STRAIGHT, answer.proposed().kind());
    assertEquals(12000 * 0.925, answer.modulusAlong().at(0), 1e-4);
    assertEquals(12000 * 1.075, answer.modulusAlong().at(1490), 1e-4);
    assertEquals(0, answer.proposed().chiSquared(), 1e-9);
    assertEquals(List.of(), answer.runsStandingOut());
  }

  @Test
  void theGaugesSpringIsTakenOffExactlyThoughTheModulusVaries() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(1).rising(0.15).withoutErrors();
    shaft.springNPerMm = 0.05;
    SurveyAnswer answer = shaft.survey(InventedShaft.EIGHT);
    assertEquals(12000 * 0.925, answer.modulusAlong().at(0), 1e-4);
    assertEquals(12000 * 1.075, answer.modulusAlong().at(1490), 1e-4);
  }

  @Test
  void withoutErrorsASoftThirdComesBackWithItsBorders() throws PoorRunException {
    SurveyAnswer answer =
        new InventedShaft(1).softThird(1, 0.2).withoutErrors().survey(InventedShaft.EIGHT);
    assertEquals(ModelKind.PIECES, answer.proposed().kind());
    double[] borders = answer.modulusAlong().breaksMm();
    assertEquals(2, borders.length);
    assertEquals(1490 / 3.0, borders[0], 1);
    assertEquals(2 * 1490 / 3.0, borders[1], 1);
    assertEquals(12000, answer.modulusAlong().at(100), 12);
    assertEquals(9600, answer.modulusAlong().at(700), 12);
    assertEquals(5, answer.proposed().parameters());
  }

  @Test
  void withoutErrorsAnotherRatioComesBack() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(1).withoutErrors();
    shaft.ratio = 40;
    SurveyAnswer answer = shaft.survey(InventedShaft.EIGHT);
    assertEquals(ModelKind.RATIO, answer.proposed().kind());
    assertEquals(40, answer.proposed().ratio().value(), 1e-5);
    assertEquals(12000, answer.modulusAlong().at(0), 1e-3);
  }

  @Test
  void twoRunsGiveOneModulusWithoutACriterion() throws PoorRunException {
    SurveyAnswer answer = new InventedShaft(5).survey(InventedShaft.EIGHT.subList(0, 2));
    assertEquals(List.of(ModelKind.ONE), kinds(answer));
    assertEquals(ModelKind.ONE, answer.proposed().kind());
    assertNull(answer.proposed().aicc());
    assertTrue(answer.warnings().stream().anyMatch(SurveyWarning.OneModelOnly.class::isInstance));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 8})
  void aModelWithTooFewRunsForItsCriterionIsLeftOut(int runs) throws PoorRunException {
    SurveyAnswer answer = new InventedShaft(5).survey(InventedShaft.EIGHT.subList(0, runs));
    for (SurveyModel m : answer.models()) {
      assertTrue(runs - m.parameters() - 1 > 0, m.kind() + " with " + runs + " runs");
    }
    assertEquals(runs >= 4, kinds(answer).contains(ModelKind.STRAIGHT));
    assertEquals(runs >= 5, kinds(answer).contains(ModelKind.PIECES));
  }

  @Test
  void repeatsOfOneSetUpBearOneModulusAloneAndSayHowTheBenchRepeats() throws PoorRunException {
    SetUp setUp = InventedShaft.EIGHT.get(0);
    List<SetUp> repeats = new ArrayList<>(Collections.nCopies(6, setUp));
    repeats.set(2, setUp.turnedBy(90));
    repeats.set(5, setUp.turnedBy(45));
    InventedShaft shaft = new InventedShaft(9);
    shaft.modulusMPa = x -> 12000 + x;
    SurveyAnswer answer = shaft.survey(repeats);
    assertEquals(List.of(ModelKind.ONE), kinds(answer));
    assertEquals(5, answer.repeatability().degreesOfFreedom());
    double[] residuals = answer.proposed().residualsMPa();
    double sum = 0;
    for (double r : residuals) {
      sum += r * r;
    }
    double scatter = Math.sqrt(sum / 5);
    assertEquals(scatter, answer.repeatability().standardDeviationMPa(), 0.01 * scatter);
    assertFalse(answer.repeatability().isWorseThanStated());
  }

  @Test
  void twoSetUpsHoweverOftenBearNoPieces() throws PoorRunException {
    List<SetUp> two = new ArrayList<>(InventedShaft.EIGHT.subList(5, 7));
    for (int more = 0; more < 3; more++) {
      two.addAll(InventedShaft.EIGHT.subList(5, 7));
    }
    SurveyAnswer answer = new InventedShaft(4).survey(two);
    assertTrue(kinds(answer).contains(ModelKind.STRAIGHT), kinds(answer).toString());
    assertFalse(kinds(answer).contains(ModelKind.PIECES), kinds(answer).toString());
  }

  @Test
  void aBenchThatRepeatsWorseThanStatedMakesTheUncertaintyGreater() throws PoorRunException {
    List<SetUp> twice = new ArrayList<>(InventedShaft.EIGHT.subList(0, 3));
    twice.addAll(InventedShaft.EIGHT.subList(0, 3));
    twice.addAll(InventedShaft.EIGHT.subList(0, 3));
    InventedShaft honest = new InventedShaft(4);
    Estimate good = honest.survey(twice).proposed().modulusAt(0);
    InventedShaft shaky = new InventedShaft(4);
    shaky.wrongSupportMm = 12;
    SurveyAnswer answer = shaky.survey(twice);
    assertTrue(answer.repeatability().isWorseThanStated());
    assertTrue(answer.warnings().stream().anyMatch(SurveyWarning.PoorRepeats.class::isInstance));
    Estimate bad = model(answer, ModelKind.ONE).modulusAt(0);
    assertTrue(bad.standardUncertainty() > 1.1 * good.standardUncertainty());
  }

  @Test
  void aRunOnAWrongPlaceStandsOutAndStaysInTheFit() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(21);
    shaft.wrongRun = 2;
    shaft.wrongSupportMm = 8;
    SurveyAnswer answer = shaft.survey(InventedShaft.EIGHT);
    assertEquals(ModelKind.ONE, answer.proposed().kind());
    assertTrue(answer.runsStandingOut().contains(2), answer.runsStandingOut().toString());
    assertEquals(8, answer.proposed().residualsMPa().length);
    assertTrue(
        answer.warnings().stream().anyMatch(w -> w.inWords().startsWith("run 3 stands out")));
  }

  @ParameterizedTest
  @ValueSource(doubles = {8, 25, 80, -60})
  void oneRunOnAWrongPlaceDoesNotMakeTheRightOnesStandOut(double wrongMm) throws PoorRunException {
    InventedShaft shaft = new InventedShaft(21);
    shaft.wrongRun = 2;
    shaft.wrongSupportMm = wrongMm;
    SurveyAnswer answer = shaft.survey(InventedShaft.EIGHT);
    assertEquals(List.of(2), answer.runsStandingOut());
  }

  @Test
  void ofTwoRunsThatDisagreeNeitherIsTheWrongOne() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(21);
    shaft.wrongRun = 1;
    shaft.wrongSupportMm = 60;
    assertEquals(List.of(0, 1), shaft.survey(InventedShaft.EIGHT.subList(0, 2)).runsStandingOut());
  }

  @Test
  void runsOfTwoShaftsAreRefusedWithTheKeyThatDiffers() throws PoorRunException {
    List<SurveyRun> runs =
        new ArrayList<>(new InventedShaft(1).test(InventedShaft.EIGHT.subList(0, 2)));
    InventedShaft other = new InventedShaft(1);
    other.stations = 6;
    runs.addAll(other.test(InventedShaft.EIGHT.subList(0, 1)));
    DifferentShaftsException refused =
        assertThrows(DifferentShaftsException.class, () -> SurveyProblem.of(runs));
    assertEquals(2, refused.run());
    assertTrue(refused.getMessage().contains("shaft.stations"));
  }

  /** Any number of runs anywhere, errors as stated, far greater or none at all stated. */
  @Test
  void whateverTheRunsAnAnswerComesThatIsWhole() throws PoorRunException {
    SplittableRandom random = new SplittableRandom(77);
    for (int i = 0; i < 150; i++) {
      InventedShaft shaft = new InventedShaft(i);
      shaft.stations = 2 + random.nextInt(9);
      shaft.statedPositionMm = new double[] {0, 0.5, 5}[random.nextInt(3)];
      shaft.statedDiameterMm = new double[] {0, 0.02, 0.3}[random.nextInt(3)];
      shaft.springNPerMm = random.nextBoolean() ? 0 : 0.05;
      if (random.nextInt(3) == 0) {
        shaft.stated = new Instrument(0, 0, 0, 0, 0);
      }
      double wave = 0.4 * random.nextDouble();
      shaft.modulusMPa = x -> 12000 * (1 + wave * Math.sin(x / 150));
      int n = 2 + random.nextInt(11);
      List<SetUp> setUps = new ArrayList<>();
      for (int j = 0; j < n; j++) {
        double a = 20 + 900 * random.nextDouble();
        double b = a + 150 + (1470 - a - 150) * random.nextDouble();
        double c = a + (b - a) * (0.2 + 0.6 * random.nextDouble());
        double g = random.nextBoolean() ? c : a + (b - a) * (0.2 + 0.6 * random.nextDouble());
        setUps.add(
            j > 0 && random.nextInt(4) == 0
                ? setUps.get(j - 1).turnedBy(90)
                : new SetUp(a, b, c, g, 0));
      }
      SurveyAnswer answer = shaft.survey(setUps);
      assertTrue(answer.models().contains(answer.proposed()), "case " + i);
      for (SurveyModel m : answer.models()) {
        for (double x : new double[] {0, 500, 1000, 1490}) {
          Estimate e = m.modulusAt(x);
          assertTrue(
              e.value() > 0 && e.standardUncertainty() >= 0, "case " + i + " " + m.kind() + e);
        }
        assertTrue(Double.isFinite(m.chiSquared()), "case " + i);
      }
    }
  }
}
