package sagwright.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;

class FinishedMassTest {
  private static final Taper TAPER =
      Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473);

  private static final FinishPlan BARE = FinishPlan.bare(TAPER);

  /** reference/formulas.md, 4.5: cone frustum. */
  @Test
  void aBareShaftIsAConeFrustum() {
    MassAndBalance got = new FinishedMass(BARE, 670).total();
    assertEquals(311.790934504, got.massG(), 1e-9);
    assertEquals(507.40226849, got.balanceFromButtMm(), 1e-8);
  }

  /** reference/formulas.md, 4.5: ring 9.5/8.0 by 9.5 at 8500, on a cylindrical tip. */
  @Test
  void theFerruleIsARingAroundTheWoodInItsBore() {
    Taper cylinder = Taper.round(List.of(Station.round(0, 9.5), Station.round(100, 9.5)), 100);
    FinishPlan plan =
        new FinishPlan(cylinder, 0.05, null, new Ferrule(9.5, 8, 8500), null, List.of(), List.of());
    double wood = Math.PI / 4 * 670e-6 * (9.5 * 9.5 * 90.5 + 8 * 8 * 9.5);
    assertEquals(1.66479866948 + wood, new FinishedMass(plan, 670).total().massG(), 1e-10);
  }

  /** reference/formulas.md, 4.5: rod 12 by 50 of lead. */
  @Test
  void aWeightDisplacesTheWoodThatLiesThere() {
    double bare = new FinishedMass(BARE, 670).total().massG();
    FinishPlan plan = BARE.withWeights(List.of(new Weight(1400, 1450, 12, 11340)));
    double displaced = Math.PI / 4 * 144 * 50 * 670e-6;
    assertEquals(
        bare + 64.1261892451 - displaced, new FinishedMass(plan, 670).total().massG(), 1e-9);
  }

  @Test
  void aWeightInASpliceDisplacesCoreAndSpliceWood() {
    // From 1030 to the butt the core's half runs from the radius to 4; at 1473 it is 4 exactly.
    FinishPlan spliced = withSplice(List.of());
    FinishPlan leaded = withSplice(List.of(new Weight(1472.999, 1473, 12, 11340)));
    double gain =
        new FinishedMass(leaded, 670).total().massG()
            - new FinishedMass(spliced, 670).total().massG();
    // In a circle of radius 6 a square of half 4 lies whole: 64 of 36π mm².
    double perMm = 1e-6 * (11340 * 36 * Math.PI - 670 * 64 - 1120 * (36 * Math.PI - 64));
    assertEquals(perMm * 0.001, gain, 1e-7 * perMm);
  }

  private static FinishPlan withSplice(List<Weight> weights) {
    Splice splice = new Splice(1030, 4, 1120, 15500, 0);
    return new FinishPlan(TAPER, 0.05, null, null, splice, weights, List.of());
  }

  @Test
  void extrasPullTheBalanceTowardsThem() {
    FinishPlan plan =
        new FinishPlan(
            TAPER, 0.05, null, null, null, List.of(), List.of(new Extra("joint", 1473, 38)));
    MassAndBalance bare = new FinishedMass(BARE, 670).total();
    MassAndBalance got = new FinishedMass(plan, 670).total();
    assertEquals(bare.massG() + 38, got.massG(), 1e-10);
    assertEquals(
        bare.massG() * bare.balanceFromButtMm() / (bare.massG() + 38),
        got.balanceFromButtMm(),
        1e-9);
  }
}
