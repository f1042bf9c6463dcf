package sagwright.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.BlankWood;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/** Against cylinders, for which stiffness and mass are closed forms. */
class PlaningStepTest {
  private static final double LENGTH = 1400;
  private static final double DIAMETER = 20;
  private static final double MODULUS = 12_000;
  private static final double RATIO = 14;
  private static final SetUp MIDDLE = new SetUp(200, 1200, 700, 700, 0);
  private static final Grader GRADER = new Grader(Sureness.USUAL);

  private static final BlankWood BLANK =
      BlankWood.ofOneWood(
          cylinder(24, 1450),
          Math.PI / 4 * 24 * 24 * 1450 * 700e-6, // 700 kg/m³
          ModulusAlong.constant(new Estimate(MODULUS, 60)),
          RATIO);

  private static Taper cylinder(double diameterMm, double lengthMm) {
    return Taper.round(
        List.of(Station.round(0, diameterMm), Station.round(lengthMm, diameterMm)), lengthMm);
  }

  private static Order order(FinishPlan plan, double askNPerMm) {
    return new Order(
        "R-1", null, null, null, plan, Ask.ofStiffness(MIDDLE, askNPerMm, 3), List.of());
  }

  /** Bending and shear of a cylinder loaded in the middle of its span (docs/contract.md, 2). */
  private static double stiffnessNPerMm(double diameterMm) {
    double span = 1000;
    double second = Math.PI * Math.pow(diameterMm, 4) / 64;
    double area = Math.PI * diameterMm * diameterMm / 4;
    double bending = Math.pow(span, 3) / (48 * MODULUS * second);
    double shear = 10.0 / 9 * RATIO * span / (4 * MODULUS * area);
    return 1 / (bending + shear);
  }

  private static double massG(double diameterMm) {
    return Math.PI / 4 * diameterMm * diameterMm * LENGTH * 700e-6;
  }

  @Test
  void aTenthOfAMillimetreIsWhatTheClosedFormSays() {
    Order order =
        order(FinishPlan.bare(cylinder(DIAMETER, LENGTH)), 1.03 * stiffnessNPerMm(DIAMETER));
    GradedForecast planned = GRADER.grade(BLANK, order);
    for (double step : new double[] {0.1, -0.1, 1}) {
      PlaningStep planed = PlaningStep.of(GRADER, BLANK, planned, step).orElseThrow();
      double stiffer = stiffnessNPerMm(DIAMETER + step) - stiffnessNPerMm(DIAMETER);
      assertThat(planed.stiffnessChangeNPerMm()).isCloseTo(stiffer, within(1e-8));
      assertThat(planed.massChangeG())
          .isCloseTo(massG(DIAMETER + step) - massG(DIAMETER), within(1e-8));
      assertThat(planed.graded().forecast().cut().leastSpareMm()).isCloseTo(4 - step, within(1e-9));
    }
    // the ask lies 3 % above the forecast, at the edge of its tolerance
    assertThat(planned.grade().chanceWithinTolerance()).isCloseTo(0.5, within(0.05));
    assertThat(
            PlaningStep.of(GRADER, BLANK, planned, 0.1)
                .orElseThrow()
                .graded()
                .grade()
                .chanceWithinTolerance())
        .isGreaterThan(0.9);
  }

  @Test
  void theCutStaysWhereItWasFound() {
    FinishPlan plan = FinishPlan.bare(cylinder(DIAMETER, LENGTH)).cutFrom(31.0);
    GradedForecast planned = GRADER.grade(BLANK, order(plan, 2));
    assertThat(
            PlaningStep.of(GRADER, BLANK, planned, -0.1)
                .orElseThrow()
                .graded()
                .forecast()
                .cut()
                .fromMm())
        .isEqualTo(31);
  }

  @Test
  void whatWouldComeThroughIsNoStep() {
    FinishPlan bare = FinishPlan.bare(cylinder(DIAMETER, LENGTH));
    FinishPlan tight =
        new FinishPlan(
            bare.taper(), 0.05, null, new Ferrule(10, 20, 8500), null, List.of(), List.of());
    GradedForecast planned = GRADER.grade(BLANK, order(tight, 2));
    assertThat(PlaningStep.of(GRADER, BLANK, planned, -0.1)).isEmpty();
    assertThat(PlaningStep.of(GRADER, BLANK, planned, 0.1)).isPresent();
    assertThat(PlaningStep.of(GRADER, BLANK, GRADER.grade(BLANK, order(bare, 2)), -20)).isEmpty();
  }

  @Test
  void theWoodWantedIsThatOfTheClosedForm() {
    FinishPlan plan = FinishPlan.bare(cylinder(DIAMETER, LENGTH));
    WoodWanted wood = WoodWanted.by(order(plan, 1.1 * stiffnessNPerMm(DIAMETER)), RATIO);
    assertThat(wood.softestMPa()).isCloseTo(1.1 * 0.97 * MODULUS, within(1e-4));
    assertThat(wood.stiffestMPa()).isCloseTo(1.1 * 1.03 * MODULUS, within(1e-4));
    assertThat(WoodWanted.by(order(plan, 1e4), RATIO).softestMPa())
        .isEqualTo(Double.POSITIVE_INFINITY);
  }
}
