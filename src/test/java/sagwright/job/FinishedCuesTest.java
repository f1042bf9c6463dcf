package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.grade.ReferenceCue;
import sagwright.job.FinishedCues.FinishedCue;
import sagwright.job.InventedBlanks.Spec;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

class FinishedCuesTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final SetUp MIDDLE = new SetUp(100, 1100, 600, 600, 0);
  private static final SetUp BUTT = new SetUp(700, 1450, 1075, 1075, 0);

  @TempDir Path folder;
  private Workshop workshop;

  @BeforeEach
  void open() throws WorkshopException {
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"));
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private void bring(String... documents) throws Exception {
    for (String document : documents) {
      new ImportDocuments(workshop, SPECIES).bring(document, true);
    }
  }

  private List<FinishedCue> cues() throws WorkshopException {
    return new FinishedCues(workshop, SPECIES).all();
  }

  private static Spec cue(String tag) {
    return Spec.ash(tag, 12500).at("finished cue");
  }

  @Test
  void onlyFinishedCuesThatWereMeasuredCanBeAskedForAgain() throws Exception {
    bring(
        InventedBlanks.sheet(Spec.ash("25-001", 12000)),
        InventedBlanks.untested(cue("25-002")),
        InventedBlanks.poor(cue("25-003")),
        InventedBlanks.sheet(cue("25-004")));
    assertEquals(List.of("25-004"), cues().stream().map(c -> c.cue().name()).toList());
  }

  @Test
  void whatWasMadeForAnOrderStandsBeforeVisitors() throws Exception {
    bring(
        InventedBlanks.sheet(cue("A-visitor")),
        InventedBlanks.sheet(Spec.ash("25-001", 12000)),
        InventedBlanks.order("R-0002", 2.1, 5));
    Blank made = workshop.blanks().require("25-001");
    workshop.promises().make(made, workshop.orders().require("R-0002"));
    bring(InventedBlanks.sheet(Spec.ash("25-001", 12000).at("finished cue")));
    List<FinishedCue> cues = cues();
    assertEquals(List.of("25-001", "A-visitor"), cues.stream().map(c -> c.cue().name()).toList());
    assertEquals("R-0002", cues.get(0).order().number());
    assertNull(cues.get(1).order());
  }

  /** The sheet's run is made with a modulus of 12500 MPa, by the contract's own formula. */
  @Test
  void aVisitorIsAsStiffAsTheBenchShowedAndElsewhereAsItsWoodIs() throws Exception {
    bring(InventedBlanks.sheet(cue("V-1")));
    ReferenceCue cue = cues().get(0).cue();
    assertTrue(cue.isMeasuredAt(MIDDLE));
    double there = InventedBlanks.stiffnessNPerMm(cue("V-1"), MIDDLE);
    assertEquals(there, cue.stiffnessNPerMm(MIDDLE).value(), 1e-9 * there);
    assertTrue(cue.stiffnessNPerMm(MIDDLE).standardUncertainty() > 0);
    double atButt = InventedBlanks.stiffnessNPerMm(cue("V-1"), BUTT);
    assertEquals(atButt, cue.stiffnessNPerMm(BUTT).value(), 1e-6 * atButt);
  }

  /** Planed since its run: its wood holds, its measured stiffness does not. */
  @Test
  void aCueThatWasPlanedSinceIsReckonedFromItsWood() throws Exception {
    bring(InventedBlanks.sheet(cue("V-1")));
    String planed = InventedBlanks.untested(cue("V-1").withButt(29));
    workshop
        .blanks()
        .addCaliperEntry(
            workshop.blanks().require("V-1"), new SheetReader(SPECIES).read(planed), "planed");
    ReferenceCue cue = cues().get(0).cue();
    assertNull(cue.measured());
    double thinner = InventedBlanks.stiffnessNPerMm(cue("V-1").withButt(29), MIDDLE);
    assertEquals(thinner, cue.stiffnessNPerMm(MIDDLE).value(), 1e-6 * thinner);
  }

  /** Typed in at the rack, then tested: the run is worked out as that of a spliced shaft. */
  @Test
  void aVisitorIsAskedForAgainWithItsOwnSplice() throws Exception {
    bring(InventedBlanks.untested(cue("V-2")));
    KeepSplice.Measured typed = new KeepSplice.Measured(460, 4, "ebony African", null, null);
    new KeepSplice(workshop, SPECIES).keep("V-2", typed);
    Splice splice = new Splice(1030, 4, 1009, 17_700, 0); // as the published table has this wood
    bring(InventedBlanks.sheet(cue("V-2"), splice, BUTT));
    ReferenceCue cue = cues().get(0).cue();
    assertEquals(splice, cue.splice());
    assertTrue(cue.isMeasuredAt(BUTT));
    for (SetUp at : List.of(MIDDLE, BUTT)) {
      double expected = 1 / InventedBlanks.splicedMmPerN(cue("V-2"), splice, at);
      assertEquals(expected, cue.stiffnessNPerMm(at).value(), 1e-6 * expected);
    }
  }

  @Test
  void aSpliceThatCannotBeIsRefusedAndLeavesTheRecordAsItWas() throws Exception {
    bring(InventedBlanks.untested(cue("V-2")));
    KeepSplice splices = new KeepSplice(workshop, SPECIES);
    for (KeepSplice.Measured bad :
        List.of(
            new KeepSplice.Measured(460, 16, "ebony African", null, null), // the butt is 31 mm
            new KeepSplice.Measured(1500, 4, "ebony African", null, null),
            new KeepSplice.Measured(460, 4, "driftwood", null, null),
            new KeepSplice.Measured(460, 4, null, 1120.0, -1.0))) {
      WorkshopException refused =
          assertThrows(WorkshopException.class, () -> splices.keep("V-2", bad));
      assertTrue(refused.getMessage().startsWith("splice"), refused.getMessage());
    }
    assertEquals(1, workshop.blanks().caliperEntries(workshop.blanks().require("V-2")).size());
  }
}
