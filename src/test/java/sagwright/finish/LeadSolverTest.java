package sagwright.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;

class LeadSolverTest {
  private static final FinishPlan PLAN =
      new FinishPlan(
          Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473),
          0.05,
          null,
          null,
          new Splice(1030, 4, 1120, 15500, 0),
          List.of(),
          List.of());

  private static final LeadBore BORE = new LeadBore(1150, 1463, 12, LeadBore.LEAD_KG_M3);

  private static LeadPlan solve(double massG, double balanceMm) {
    return new LeadSolver(PLAN, 690, BORE, new LeadAim(massG, 10, balanceMm, 10)).solve();
  }

  @ParameterizedTest
  @CsvSource({"1400, 1450", "1150, 1200", "1300, 1463", "1455, 1463", "1150, 1463"})
  void aLeadThatWasTakenOutIsFoundAgain(double from, double to) {
    MassAndBalance with =
        new FinishedMass(PLAN.withWeights(List.of(BORE.filled(from, to))), 690).total();
    LeadPlan found = solve(with.massG(), with.balanceFromButtMm());
    assertEquals(from, found.lead().fromMm(), 1e-3);
    assertEquals(to, found.lead().toMm(), 1e-3);
    assertTrue(found.isReached());
    assertTrue(found.inWords().endsWith("brings the weight and the balance"));
  }

  @Test
  void aBalanceTooNearTheButtIsMissedByAsLittleAsCanBe() {
    MassAndBalance bare = new FinishedMass(PLAN, 690).total();
    LeadPlan found = solve(bare.massG() + 40, 200);
    assertFalse(found.isReached());
    double miss = found.aim().missOf(found.got());
    for (double from = BORE.fromMm(); from < BORE.toMm(); from += 5) {
      for (double to = from + 5; to <= BORE.toMm(); to += 5) {
        MassAndBalance other =
            new FinishedMass(PLAN.withWeights(List.of(BORE.filled(from, to))), 690).total();
        assertTrue(miss <= found.aim().missOf(other) + 1e-9, from + " to " + to);
      }
    }
  }

  @Test
  void whatIsTooHeavyAlreadyTakesNoLead() {
    MassAndBalance bare = new FinishedMass(PLAN, 690).total();
    LeadPlan found = solve(bare.massG() - 30, bare.balanceFromButtMm());
    assertNull(found.lead());
    assertFalse(found.isReached());
    assertEquals(30, found.massOffG(), 1e-9);
    assertEquals(
        "no lead in this bore brings both; nearest comes no lead: 30.0 g too heavy, balance 0.0 mm"
            + " too near the butt",
        found.inWords());
  }

  @Test
  void moreThanTheBoreHoldsFillsIt() {
    MassAndBalance full =
        new FinishedMass(PLAN.withWeights(List.of(BORE.filled(1150, 1463))), 690).total();
    LeadPlan found = solve(full.massG() + 200, full.balanceFromButtMm());
    assertFalse(found.isReached());
    assertEquals(1150, found.lead().fromMm(), 0.01);
    assertEquals(1463, found.lead().toMm(), 0.01);
    assertEquals(-200, found.massOffG(), 0.1);
  }

  @Test
  void aBoreThatLeavesTheWoodIsRefused() {
    LeadBore wide = new LeadBore(300, 500, 15, LeadBore.LEAD_KG_M3);
    LeadAim aim = new LeadAim(500, 10, 450, 10);
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> new LeadSolver(PLAN, 690, wide, aim));
    assertTrue(refused.getMessage().contains("wider than the round"));
    LeadBore light = new LeadBore(1200, 1300, 12, 1000);
    assertThrows(IllegalArgumentException.class, () -> new LeadSolver(PLAN, 690, light, aim));
  }
}
