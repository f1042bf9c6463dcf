package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;

class OrderPracticeTest {
  private static final Ask ASK =
      new Ask(new SetUp(100, 800, 450, 450, 0), 2.1, 5, new Aim(510, 15.0), new Aim(430, null));

  private static FinishPlan plan(double lengthMm, double tipMm, double buttMm) {
    return FinishPlan.bare(
        Taper.round(List.of(Station.round(0, tipMm), Station.round(lengthMm, buttMm)), lengthMm));
  }

  private static FinishPlan with(Ferrule ferrule, Splice splice, List<Extra> extras) {
    FinishPlan bare = plan(1473, 9.5, 29);
    return new FinishPlan(bare.taper(), 0.05, null, ferrule, splice, List.of(), extras);
  }

  private static Order order(FinishPlan plan, Ask ask, Double flatMm) {
    OrderRemarks remarks = new OrderRemarks(flatMm, null, List.of());
    return new Order("R-1", null, null, null, plan, ask, List.of(), remarks);
  }

  private static List<String> of(FinishPlan plan) {
    return of(order(plan, ASK, null));
  }

  private static List<String> of(Order order) {
    return OrderPractice.warningsOf(order).stream().map(OrderWarning::inWords).toList();
  }

  @Test
  void aCueAsMostAreDrawsNoWarning() {
    FinishPlan plan =
        with(
            new Ferrule(9.5, 8.2, 8500),
            new Splice(1030, 4, 1120, 15500, 0),
            List.of(new Extra("joint", 740, 38)));
    assertEquals(List.of(), of(order(plan, ASK, 80.0)));
  }

  /** A yard is 914.4 mm; the rule's own metric figure is 914, and what it allows is not scolded. */
  @Test
  void theRulesOfTheGamesAreTakenToTheirOwnFigures() {
    assertEquals(
        List.of("pool rules: no shorter than 1016 mm"), of(plan(914, 9.5, 29)).subList(0, 1));
    assertEquals(
        List.of("snooker rules: no shorter than 914 mm", "pool rules: no shorter than 1016 mm"),
        of(plan(913.9, 9.5, 29)).subList(0, 2));
    assertEquals(List.of("length 1016: common is 1370 to 1550 mm"), of(plan(1016, 9.5, 29)));
    assertEquals("pool rules: tip no wider than 14 mm", of(plan(1473, 14.1, 29)).get(0));
    Ask heavy = new Ask(ASK.setUp(), 2.1, 5, new Aim(709, null), null);
    assertEquals(
        "pool rules: no heavier than 709 g", of(order(plan(1473, 9.5, 29), heavy, null)).get(0));
    assertEquals(
        "pool rules: ferrule no longer than 25.4 mm",
        of(with(new Ferrule(25.5, 8.2, 8500), null, List.of())).get(0));
  }

  @Test
  void whatIsSeldomMadeIsNamedWithWhatIsCommon() {
    assertEquals(List.of("tip 7.5: common is 8 to 13.5 mm"), of(plan(1473, 7.5, 29)));
    assertEquals(List.of("butt 34: common is 26 to 33 mm"), of(plan(1473, 9.5, 34)));
    Ask odd = new Ask(ASK.setUp(), 2.1, 0.5, new Aim(380, null), new Aim(300, null));
    assertEquals(
        List.of(
            "weight 380: common is 425 to 625 g",
            "balance 300: common is 350 to 530 mm",
            "tolerance 0.5: common is 1 to 15 %",
            "butt flat 300: common is 40 to 130 mm"),
        of(order(plan(1473, 9.5, 29), odd, 300.0)));
  }

  @Test
  void aTaperThatRunsBackwardsIsSaidWithItsPlace() {
    Taper taper =
        Taper.round(
            List.of(
                Station.round(0, 9.5),
                Station.round(700, 19),
                Station.round(900, 18.5),
                Station.round(1473, 29)),
            1473);
    assertEquals(List.of("taper runs backwards, 700 to 900 mm"), of(FinishPlan.bare(taper)));
  }

  @Test
  void ferruleAndTipAreHeldTogether() {
    assertEquals(
        List.of("the ferrule's wall is 0.25 mm thin"),
        of(with(new Ferrule(9.5, 9, 8500), null, List.of())));
    assertEquals(
        List.of("bore 7.0 mm: thin wood in a tip of 9.5 mm"),
        of(with(new Ferrule(9.5, 7, 8500), null, List.of())));
  }

  @Test
  void aLongSpliceAndAJointWithoutAWeightAreSaid() {
    assertEquals(
        List.of("splice points at 700 mm: in the front half"),
        of(with(null, new Splice(700, 4, 1120, 15500, 0), List.of())));
    assertEquals(
        List.of("joint counts with no weight: weigh it"),
        of(with(null, null, List.of(new Extra("Joint", 740, 0), new Extra("badge", 1400, 0)))));
  }
}
