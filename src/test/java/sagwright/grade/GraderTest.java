package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.BlankWood;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishProblem;
import sagwright.finish.Weight;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

class GraderTest {
  private static final SetUp MIDDLE = new SetUp(100, 1100, 600, 600, 0);
  private static final Ask BUTT = Ask.ofStiffness(new SetUp(700, 1450, 1075, 1075, 0), 21.5, 8);

  /** The blank of docs/contract.md, sections 3 and 4. */
  private static final BlankWood BLANK =
      BlankWood.ofOneWood(
          new Taper(
              SectionShape.ELLIPSE,
              List.of(new Station(0, 12.50, 12.48), new Station(1490, 31, 31)),
              1490),
          405.0,
          ModulusAlong.constant(new Estimate(12340, 54.929218933393294)),
          14);

  private static Order order(Ask ask, Ask... also) {
    FinishPlan plan =
        new FinishPlan(
            Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473),
            0.05,
            8.0,
            new Ferrule(9.5, 8, 8500),
            new Splice(1030, 4, 1120, 15500, 0),
            List.of(new Weight(1400, 1450, 12, 11340)),
            List.of(new Extra("joint", 740, 38)));
    return new Order("R-0007", "European ash", null, null, plan, ask, List.of(also));
  }

  private static GradedForecast grade(Order order) {
    return new Grader(Sureness.USUAL).grade(BLANK, order);
  }

  /** docs/contract.md, section 5: its example. */
  @Test
  void theContractsShaftMeetsItsAsk() {
    Ask ask = new Ask(MIDDLE, 2.25, 5, new Aim(470, 15.0), new Aim(450, 15.0));
    GradedForecast graded = grade(order(ask, BUTT));
    assertEquals(0.98616, graded.grade().chanceWithinTolerance(), 5e-6);
    assertEquals(Verdict.MEETS, graded.grade().verdict());
    assertEquals("meets", graded.grade().verdict().word());
    AskGrade butt = graded.alsoAsked().get(0);
    assertEquals(21.52922219672368, butt.stiffnessNPerMm().value(), 1e-13);
    assertEquals(0.2013, butt.stiffnessNPerMm().standardUncertainty(), 5e-5);
    assertEquals(1, butt.chanceWithinTolerance(), 1e-12);
    assertEquals(0.98616, graded.chanceOfAll(), 5e-6);
    assertEquals(1, graded.warnings().size());
    assertEquals(
        "balance 428.5 mm from the butt lies outside 450 ± 15", graded.warnings().get(0).inWords());
  }

  @ParameterizedTest
  @CsvSource({
    "2.30, 5, meets",
    "2.6, 5, softer",
    "2.0, 5, stiffer",
    "2.4, 5, undecided",
    "2.2958, 0, undecided"
  })
  void theFourWordsSayWhereTheStiffnessSurelyLies(double asked, double percent, String word) {
    GradedForecast graded = grade(order(Ask.ofStiffness(MIDDLE, asked, percent)));
    AskGrade grade = graded.grade();
    assertEquals(word, grade.verdict().word());
    assertEquals(
        1, grade.chanceWithinTolerance() + grade.chanceBelow() + grade.chanceAbove(), 1e-14);
    assertEquals(grade.chanceWithinTolerance(), graded.chanceOfAll());
  }

  @Test
  void theShopsSurenessDecidesWhereAWordIsSaid() {
    Order order = order(Ask.ofStiffness(MIDDLE, 2.25, 5));
    assertEquals(
        Verdict.UNDECIDED, new Grader(new Sureness(0.99)).grade(BLANK, order).grade().verdict());
    assertThrows(IllegalArgumentException.class, () -> new Sureness(0.4));
  }

  /**
   * Both asks rest on one modulus and one planing: together they are likelier than by themselves.
   */
  @Test
  void sharedErrorsMakeTheAsksMeetTogether() {
    SetUp front = new SetUp(100, 900, 500, 500, 0);
    Order free = order(Ask.ofStiffness(MIDDLE, 2.3, 1), Ask.ofStiffness(front, 3, 1));
    double frontStiffness = grade(free).alsoAsked().get(0).stiffnessNPerMm().value();
    GradedForecast graded = grade(order(free.ask(), Ask.ofStiffness(front, frontStiffness, 1)));
    double one = graded.grade().chanceWithinTolerance();
    double other = graded.alsoAsked().get(0).chanceWithinTolerance();
    assertTrue(graded.chanceOfAll() <= Math.min(one, other));
    assertTrue(graded.chanceOfAll() > one * other + 0.01);
  }

  @Test
  void massIsWarnedOfOutsideItsToleranceAlone() {
    Ask heavy = new Ask(MIDDLE, 2.25, 5, new Aim(490, 14.0), new Aim(428, null));
    assertTrue(grade(order(heavy)).warnings().get(0) instanceof GradeWarning.MassOutside);
    Ask inside = new Ask(MIDDLE, 2.25, 5, new Aim(490, 15.0), null);
    assertTrue(grade(order(inside)).warnings().isEmpty());
  }

  @Test
  void ordersThatCannotBeAreNamedByTheirKey() {
    Ask off =
        new Ask(new SetUp(100, 1480, 600, 600, 0), -2, -1, new Aim(470, -1.0), new Aim(1, -2.0));
    List<String> keys =
        OrderCheck.problemsOf(order(off, BUTT, off)).stream().map(FinishProblem::key).toList();
    assertEquals(
        List.of(
            "ask.setup.supportBMm",
            "ask.stiffnessNPerMm",
            "ask.tolerancePercent",
            "ask.massToleranceG",
            "ask.balanceToleranceMm"),
        keys.subList(0, 5));
    assertEquals("alsoAsked[1].setup.supportBMm", keys.get(5));
    assertTrue(OrderCheck.problemsOf(order(BUTT)).isEmpty());
  }
}
