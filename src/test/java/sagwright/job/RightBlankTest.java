package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.bench.InventedBench;
import sagwright.bench.LineOpener;
import sagwright.job.InventedBlanks.Spec;
import sagwright.job.RightBlank.Doubt;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.Grain;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.RunOrigin;
import sagwright.workshop.Workshop;

/** Three blanks of one shape: what a run shows of one may be what another has shown. */
class RightBlankTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final SheetReader READER = new SheetReader(SPECIES);
  private static final SetUp USUAL = new SetUp(100, 1100, 600, 600, 0);

  @TempDir Path folder;
  private Instant now = Instant.parse("2026-03-02T09:00:00Z");
  private Workshop workshop;
  private BenchShop shop;

  /** A bench that no head is asked of. */
  private record Bench(Calibration calibration) implements BenchPlace {
    @Override
    public LineOpener opener() {
      throw new AssertionError("no line is needed");
    }
  }

  @BeforeEach
  void openWorkshop() throws Exception {
    InstantSource clock =
        () -> {
          now = now.plus(Duration.ofMinutes(1));
          return now;
        };
    workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), new Keeper(clock, "test"));
    shop =
        new BenchShop(
            workshop, SPECIES, new Bench(InventedBench.CALIBRATION), clock, Runnable::run);
  }

  @AfterEach
  void close() throws Exception {
    workshop.close();
  }

  private void enter(String tag) throws Exception {
    workshop.blanks().enter(READER.read(InventedBlanks.untested(Spec.ash(tag, 1))));
  }

  /** A run under this tag that shows wood of such a modulus. */
  private TestedRun run(String tag, double modulusMPa, double turnDegrees, double massG)
      throws Exception {
    String sheet = InventedBlanks.sheet(Spec.ash(tag, modulusMPa), USUAL.turnedBy(turnDegrees));
    Sheet read =
        READER.read(
            sheet
                .replace("\"massG\":405", "\"massG\":" + massG)
                .replace(
                    "\"frameComplianceMmPerN\"",
                    "\"turnDegrees\":" + turnDegrees + ",\"frameComplianceMmPerN\""));
    Blank blank = workshop.blanks().require(tag);
    Run run =
        workshop
            .runs()
            .add(blank, read, RunOrigin.TYPED, new EvaluateRun(SPECIES).of(read, List.of()));
    return shop.tested(run);
  }

  /** Lays the blank, and tests what shows such a modulus. */
  private Optional<Doubt> testing(String tag, double modulusMPa, double turnDegrees)
      throws Exception {
    LaidBlank before = shop.lay(tag, USUAL.turnedBy(turnDegrees));
    return shop.doubt(run(tag, modulusMPa, turnDegrees, 405), before);
  }

  @Test
  void aResultLikeTheBlanksOwnIsNotQuestioned() throws Exception {
    enter("A");
    enter("B");
    run("B", 12_000, 0, 405);
    shop.lay("B", USUAL);
    run("A", 12_100, 0, 405);
    assertEquals(Optional.empty(), testing("A", 12_000, 0), "1 % off its own, and B to the digit");
  }

  @Test
  void aStiffnessOffByMoreThanFivePercentIsQuestioned() throws Exception {
    enter("A");
    run("A", 12_000, 0, 405);
    assertEquals(Optional.empty(), testing("A", 12_500, 0));
    enter("B");
    run("B", 12_000, 0, 405);
    Doubt doubt = testing("B", 11_280, 0).orElseThrow();
    assertEquals(-6, doubt.stiffnessPercent(), 0.01);
    assertTrue(doubt.isOfStiffness());
  }

  @Test
  void aBlankJustHandledThatFitsBetterIsNamed() throws Exception {
    enter("A");
    enter("B");
    enter("C");
    run("A", 12_000, 0, 405);
    run("B", 12_420, 0, 405);
    run("C", 12_300, 0, 405);
    shop.lay("C", USUAL);
    shop.lay("B", USUAL);
    Doubt doubt = testing("A", 12_400, 0).orElseThrow();
    assertTrue(!doubt.isOfStiffness(), "3.3 % alone would be no doubt");
    assertEquals("B", doubt.better().blank().tag());
    assertEquals(-0.16, doubt.better().percent(), 0.01);
  }

  @Test
  void atAnotherTurnABlankMayDifferFromItselfByMore() throws Exception {
    enter("A");
    enter("B");
    run("A", 12_000, 0, 405);
    run("B", 12_400, 90, 405);
    shop.lay("B", USUAL);
    assertEquals(Optional.empty(), testing("A", 12_400, 90));
  }

  @Test
  void aBlankWithoutARecordThatShowsWhatTheLastOneDidIsQuestioned() throws Exception {
    enter("A");
    enter("B");
    run("A", 12_000, 0, 405);
    shop.lay("A", USUAL);
    Doubt doubt = testing("B", 12_010, 0).orElseThrow();
    assertEquals("A", doubt.better().blank().tag());
    assertNull(doubt.stiffnessPercent());
    enter("C");
    assertEquals(Optional.empty(), testing("C", 12_200, 0));
  }

  @Test
  void aBlankThatWeighsOtherThanAtItsLastTestIsQuestioned() throws Exception {
    enter("A"); // 405 g now
    run("A", 12_000, 0, 380);
    Doubt doubt = testing("A", 12_000, 0).orElseThrow();
    assertTrue(doubt.isOfMass() && !doubt.isOfStiffness());
    assertEquals(100 * (405.0 / 380 - 1), doubt.massPercent(), 0.01);
  }

  @Test
  void runsFromBeforeATurningAreNotOfTheShaftAsItIs() throws Exception {
    enter("A");
    run("A", 12_000, 0, 405);
    assertEquals(1, shop.lay("A", USUAL).runsAsItIs().size());
    new KeepBlank(workshop, SPECIES)
        .measure(
            new KeepBlank.Measured(
                "A",
                null,
                "near size",
                SectionShape.ELLIPSE,
                1490.0,
                380.0,
                null,
                List.of(
                    new KeepBlank.Calipers(0, 11.5, null), new KeepBlank.Calipers(1490, 30, null)),
                Grain.UNSEEN),
            "turned");
    LaidBlank turned = shop.lay("A", USUAL);
    assertEquals(1, turned.runsHere().size());
    assertEquals(List.of(), turned.runsAsItIs());
  }
}
