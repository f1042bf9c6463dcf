package sagwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.finish.ButtBore;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.GradedForecast;
import sagwright.grade.Order;
import sagwright.grade.Verdict;
import sagwright.job.InventedBlanks.Spec;
import sagwright.sheet.OrderReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Against the grade that the same workshop keeps, and a walk along the finished cone. */
class PlanFinishTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final double ASK = InventedBlanks.finishedStiffnessNPerMm(12_000);

  @TempDir Path folder;
  private Workshop workshop;
  private PlanFinish plan;

  @BeforeEach
  void open() throws Exception {
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"));
    ImportDocuments imports = new ImportDocuments(workshop, SPECIES);
    for (Spec spec :
        List.of(
            Spec.ash("25-001", 11_300),
            Spec.ash("25-002", 12_050),
            Spec.ash("25-003", 12_000).withButt(28),
            Spec.ash("25-004", 12_000).of("Sugar maple"))) {
      imports.bring(InventedBlanks.sheet(spec), false);
    }
    imports.bring(InventedBlanks.untested(Spec.ash("25-005", 12_000)), false);
    imports.bring(InventedBlanks.order("R-0001", ASK, 5), false);
    plan = new PlanFinish(workshop, SPECIES);
    plan.readAgain();
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private static Order order() throws Exception {
    return OrderReader.read(InventedBlanks.order("R-0001", ASK, 5));
  }

  private static Order asking(Order order, double massG, double balanceMm) {
    Ask ask = order.ask();
    return new Order(
        order.number(),
        order.species(),
        null,
        null,
        order.finish(),
        new Ask(
            ask.setUp(),
            ask.stiffnessNPerMm(),
            ask.tolerancePercent(),
            new Aim(massG, 10.0),
            new Aim(balanceMm, 10.0)),
        List.of());
  }

  @Test
  void theBestOfTheRackIsTakenAndGradedAsItsRecordWillBe() throws Exception {
    PlannedFinish finish = plan.plan(order(), null);
    assertThat(finish.blank().tag()).isEqualTo("25-002");
    assertThat(finish.blank().why()).isEqualTo(PlannedFinish.Why.BEST);
    assertThat(finish.tags()).containsExactly("25-002", "25-001"); // the third is too thin
    GradedForecast kept = new GradeBlank(workshop, SPECIES).grade("25-002", "R-0001").graded();
    assertThat(finish.graded().forecast()).isEqualTo(kept.forecast());
    assertThat(finish.graded().chanceOfAll()).isEqualTo(kept.chanceOfAll());
  }

  @Test
  void aPickGoesBeforeAPromiseAndAPromiseBeforeTheBest() throws Exception {
    workshop
        .promises()
        .make(workshop.blanks().require("25-001"), workshop.orders().require("R-0001"));
    plan.readAgain();
    assertThat(plan.plan(order(), null).blank().tag()).isEqualTo("25-001");
    assertThat(plan.plan(order(), null).blank().why()).isEqualTo(PlannedFinish.Why.PROMISED);
    PlannedFinish picked = plan.plan(order(), "25-003");
    assertThat(picked.blank().tag()).isEqualTo("25-003");
    assertThat(picked.graded().forecast().fits()).isFalse();
    assertThat(plan.plan(order(), "25-005").blank().tag()).isEqualTo("25-001"); // untested
  }

  @Test
  void withoutABlankTheOrdersOwnTaperSaysWhatWoodItWants() throws Exception {
    Order rare =
        OrderReader.read(
            InventedBlanks.order("R-0002", ASK, 5).replace("European ash", "Snakewood"));
    PlannedFinish finish = plan.plan(rare, null);
    assertThat(finish.blank()).isNull();
    assertThat(finish.graded()).isNull();
    assertThat(finish.wanted().softestMPa()).isCloseTo(0.95 * 12_000, within(0.01));
    assertThat(finish.wanted().stiffestMPa()).isCloseTo(1.05 * 12_000, within(0.01));
    assertThat(finish.lead().canBeTaken()).isFalse();
  }

  @Test
  void aTenthOfAMillimetreIsSaidForBothSides() throws Exception {
    PlannedFinish finish = plan.plan(order(), null);
    assertThat(finish.planing()).hasSize(2);
    assertThat(finish.planing().get(0).stiffnessChangeNPerMm()).isPositive();
    assertThat(finish.planing().get(1).massChangeG()).isNegative();
    assertThat(finish.graded().grade().verdict()).isEqualTo(Verdict.MEETS);
  }

  @Test
  void theLeadThatIsTakenBringsWeightAndBalance() throws Exception {
    PlannedFinish bare = plan.plan(order(), null);
    double density =
        bare.graded().forecast().massG() / (walk(bare.order().finish(), 0).massG / 1e3);
    // what a lead of 80 mm from 1300 mm would bring, by adding up thin slices
    FinishPlan leaded =
        bare.order().finish().withWeights(List.of(new Weight(1300, 1380, 12, 11_340)));
    Slices goal = walk(leaded, density);
    Order asked = asking(order(), goal.massG, 1473 - goal.momentGMm / goal.massG);
    PlannedLead lead = plan.plan(asked, null).lead();
    assertThat(lead.lead().isReached()).isTrue();
    assertThat(lead.canBeTaken()).isTrue();
    assertThat(lead.weights()).hasSize(1);
    assertThat(lead.weights().get(0).fromMm()).isCloseTo(1300, within(0.2));
    assertThat(lead.weights().get(0).toMm()).isCloseTo(1380, within(0.2));

    Order taken = asked.finishedTo(asked.finish().withWeights(lead.weights()));
    PlannedFinish after = plan.plan(taken, null);
    assertThat(after.graded().forecast().massG()).isCloseTo(goal.massG, within(0.5));
    assertThat(after.graded().warnings()).isEmpty();
    assertThat(after.lead().canBeTaken()).isFalse(); // it is there already
  }

  @Test
  void whatNoLeadCanBringIsSaidAndHowNearItComes() throws Exception {
    PlannedLead lead = plan.plan(asking(order(), 520, 150), null).lead();
    assertThat(lead.lead().isReached()).isFalse();
    assertThat(lead.inWords())
        .contains("no lead in this bore brings both")
        .contains("too far from");
    assertThat(plan.plan(order(), null).lead().inWords()).contains("Ask a weight and a balance");
  }

  @Test
  void aBoreThatDoesNotGoIntoTheButtIsRefusedInWords() throws Exception {
    new ShopSettings(workshop).setButtBore(new ButtBore(10, 600, 28));
    plan.readAgain();
    PlannedLead lead = plan.plan(asking(order(), 520, 430), null).lead();
    assertThat(lead.lead()).isNull();
    assertThat(lead.inWords()).contains("28 mm wide").contains("does not go into this butt");
  }

  private record Slices(double massG, double momentGMm) {}

  /** The cone from 9.5 to 29 mm of order R-0001 in slices of a hundredth of a millimetre. */
  private static Slices walk(FinishPlan plan, double densityKgM3) {
    double step = 0.01;
    double perMm3 = densityKgM3 == 0 ? 1e-3 : densityKgM3 * 1e-6;
    double mass = 0;
    double moment = 0;
    for (int i = 0; i < 147_300; i++) {
      double x = (i + 0.5) * step;
      double d = 9.5 + (29 - 9.5) * x / 1473;
      double slice = Math.PI / 4 * d * d * perMm3;
      for (Weight w : plan.weights()) {
        if (x > w.fromMm() && x < w.toMm()) {
          slice +=
              Math.PI / 4 * w.diameterMm() * w.diameterMm() * (w.densityKgM3() * 1e-6 - perMm3);
        }
      }
      mass += slice * step;
      moment += x * slice * step;
    }
    return new Slices(mass, moment);
  }
}
