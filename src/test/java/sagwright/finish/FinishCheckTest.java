package sagwright.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;

/** docs/contract.md, section 5: what a plan cannot be. Touching ends are allowed. */
class FinishCheckTest {
  private static final Taper TAPER =
      Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473);

  private static final Ferrule FERRULE = new Ferrule(9.5, 8, 8500);

  private static List<String> keys(FinishPlan plan) {
    return FinishCheck.problemsOf(plan).stream().map(FinishProblem::key).toList();
  }

  private static FinishPlan with(Splice splice, Weight... weights) {
    return new FinishPlan(TAPER, 0.05, 8.0, FERRULE, splice, List.of(weights), List.of());
  }

  @Test
  void thePlanOfTheContractHasNoProblem() {
    assertTrue(FinishCheck.problemsOf(ForecastCase.all().get(0).plan()).isEmpty());
  }

  @Test
  void touchingEndsAreAllowed() {
    FinishPlan touching =
        with(
            new Splice(9.5, 14.5, 1120, 15500, 0),
            new Weight(9.5, 100, 9, 11340),
            new Weight(100, 200, 9, 11340),
            new Weight(1400, 1473, 12, 11340));
    assertEquals(List.of(), keys(touching));
    assertEquals(List.of(), keys(with(new Splice(1473, 4, 1120, 15500, 0))));
  }

  @Test
  void whatFillsTheRoundToTheLastDigitIsAllowed() {
    // 9.988… + 1 · (29.690… − 9.988…) is not 29.690… in doubles
    Taper taper =
        Taper.round(
            List.of(Station.round(0, 9.988137759189463), Station.round(1473, 29.690906601627624)),
            1473);
    double buttRadiusMm = 29.690906601627624 / 2;
    double atMm = 1400;
    double roundMm = 9.988137759189463 * (73 / 1473.0) + 29.690906601627624 * (1400 / 1473.0);
    FinishPlan filled =
        new FinishPlan(
            taper,
            0.05,
            8.0,
            null,
            new Splice(1000, buttRadiusMm, 1120, 15500, 0),
            List.of(new Weight(atMm, 1473, roundMm, 7800)),
            List.of());
    assertEquals(List.of(), keys(filled));
    assertEquals(29.690906601627624, taper.depthAt(1473));
  }

  @ParameterizedTest
  @CsvSource({
    "9.4, 100, 9, finish.weights[1].fromMm",
    "-1, 100, 9, finish.weights[1].fromMm",
    "1400, 1473.1, 12, finish.weights[1].toMm",
    "1449, 1460, 12, finish.weights[1].fromMm",
    "1300, 1401, 12, finish.weights[1].fromMm",
    "1410, 1420, 12, finish.weights[1].fromMm",
    "1300, 1300, 12, finish.weights[1].toMm",
    "100, 200, 11, finish.weights[1].diameterMm",
    "100, 200, 0, finish.weights[1].diameterMm"
  })
  void aWeightMustLieFreeAndInsideTheRound(double from, double to, double diameter, String key) {
    FinishPlan plan =
        with(null, new Weight(1400, 1450, 12, 11340), new Weight(from, to, diameter, 11340));
    assertEquals(List.of(key), keys(plan));
  }

  @ParameterizedTest
  @CsvSource({
    "1473.1, 4, finish.splice.fromMm",
    "9.4, 4, finish.splice.fromMm",
    "-1, 4, finish.splice.fromMm",
    "1030, 14.51, finish.splice.coreHalfAtButtMm",
    "1030, -0.1, finish.splice.coreHalfAtButtMm"
  })
  void aSpliceStartsBehindTheFerruleAndLeavesACoreInsideTheButt(
      double from, double half, String key) {
    assertEquals(List.of(key), keys(with(new Splice(from, half, 1120, 15500, 0))));
  }

  @Test
  void figuresThatCannotBeAreNamed() {
    FinishPlan plan =
        new FinishPlan(
            TAPER,
            -0.05,
            -8.0,
            new Ferrule(9.5, 9.6, -1),
            new Splice(1030, 4, -1, 0, -1),
            List.of(),
            List.of(new Extra("joint", 1473.5, -38)));
    assertEquals(
        List.of(
            "finish.diameterUncertaintyMm",
            "finish.cutFromMm",
            "finish.ferrule.densityKgM3",
            "finish.ferrule.boreMm",
            "finish.splice.densityKgM3",
            "finish.splice.modulusUncertaintyPercent",
            "finish.splice.modulusMPa",
            "finish.extras[0].massG",
            "finish.extras[0].xMm"),
        keys(plan));
  }

  @Test
  void aFerruleIsNoLongerThanTheShaft() {
    FinishPlan plan =
        new FinishPlan(TAPER, 0.05, null, new Ferrule(1500, 8, 8500), null, List.of(), List.of());
    assertEquals(List.of("finish.ferrule.lengthMm"), keys(plan));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 700, 1473, 1473, 12, ",
    "1, 700, 1473, 1473, 12, finish.taper[0].xMm",
    "0, 0, 1473, 1473, 12, finish.taper[1].xMm",
    "0, 700, 1470, 1473, 12, finish.taper[2].xMm",
    "0, 700, 1473, 1473, 0, finish.taper[1].diameterMm",
    "0, 700, 1473, 0, 12, finish.lengthMm"
  })
  void knotsRunFromTheTipToTheLength(
      double first, double second, double third, double length, double diameter, String key) {
    List<Station> knots =
        List.of(
            Station.round(first, 9.5), Station.round(second, diameter), Station.round(third, 29));
    assertEquals(
        key, FinishCheck.problemOfKnots(knots, length).map(FinishProblem::key).orElse(null));
  }
}
