package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SetUp;
import sagwright.job.InventedBlanks.Spec;
import sagwright.modulus.Evaluator;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.RunOrigin;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** A run that was made on one blank while the workshop thought that another lay there. */
class MoveRunTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final SheetReader READER = new SheetReader(SPECIES);
  private static final Spec LAID = Spec.ash("25-014", 12_000);
  private static final Spec THERE = Spec.ash("25-015", 13_000).withButt(28);

  @TempDir Path folder;
  private Workshop workshop;
  private Blank laid;
  private Blank there;

  @BeforeEach
  void openWorkshop() throws Exception {
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"),
            new Keeper(InstantSource.fixed(Instant.parse("2026-03-02T09:00:00Z")), "test"));
    laid = workshop.blanks().enter(READER.read(InventedBlanks.untested(LAID)));
    there = workshop.blanks().enter(READER.read(InventedBlanks.untested(THERE)));
  }

  @AfterEach
  void close() throws Exception {
    workshop.close();
  }

  /** What the bench shows of the one, on the shaft of the other. */
  private TestedRun runUnderTheWrongTag() throws Exception {
    Sheet right = READER.read(InventedBlanks.sheet(THERE));
    Sheet wrong = READER.read(right.jsonOnShaftOf(READER.read(InventedBlanks.untested(LAID))));
    Run run =
        workshop
            .runs()
            .add(laid, wrong, RunOrigin.TYPED, new EvaluateRun(SPECIES).of(wrong, List.of()));
    return new TestedRun(run, wrong, new Evaluator(SPECIES).evaluate(wrong.bendTest()));
  }

  private double modulusMPa(Blank blank) throws Exception {
    Run run = workshop.runs().latestCounting(blank).orElseThrow();
    return JsonLine.parse(run.outcome().answer()).number("modulusMPa");
  }

  @Test
  void itsModulusIsWorkedOutOnTheShaftThatItWasMadeOnAndBackAgain() throws Exception {
    TestedRun run = runUnderTheWrongTag();
    double wrong = modulusMPa(laid);
    assertTrue(Math.abs(wrong - 13_000) > 100, "from diameters that are not its own: " + wrong);
    new MoveRun(workshop, SPECIES).move(run, there, "the other one lay there");
    assertEquals(13_000, modulusMPa(there), 1);
    assertEquals(List.of(), workshop.runs().of(laid));
    LayBlank lay = new LayBlank(workshop, SPECIES, new SafeLoad(SPECIES, 0.2));
    assertEquals(13_000, lay.runs(there).get(0).evaluation().modulusMPa(), 1);
    assertEquals(
        InventedBlanks.stiffnessNPerMm(THERE, new SetUp(100, 1100, 600, 600, 0)),
        lay.runs(there).get(0).evaluation().shaftStiffnessNPerMm(),
        1e-3);
    KnownWood wood =
        new BlankModulus(workshop, SPECIES)
            .of(workshop.shortRecords(READER).of(there))
            .orElseThrow();
    assertEquals(13_000, wood.modulusMPa().moduliMPa()[0], 1);
    workshop.actions().undoLast();
    assertEquals(wrong, modulusMPa(laid));
    assertEquals(List.of(), workshop.runs().of(there));
  }

  @Test
  void aShaftThatIsTooShortForTheSetUpIsRefused() throws Exception {
    TestedRun run = runUnderTheWrongTag();
    Sheet stub =
        READER.read(
            "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\"25-016\",\"stations\":"
                + "[{\"xMm\":0,\"depthMm\":20},{\"xMm\":740,\"depthMm\":30}]}}");
    Blank butt = workshop.blanks().enter(stub);
    WorkshopException refused =
        assertThrows(
            WorkshopException.class, () -> new MoveRun(workshop, SPECIES).move(run, butt, "?"));
    assertTrue(refused.getMessage().contains("was not made on 25-016"), refused.getMessage());
    assertEquals(1, workshop.runs().of(laid).size());
  }
}
