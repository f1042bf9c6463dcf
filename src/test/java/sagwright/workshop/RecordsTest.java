package sagwright.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Blanks, orders, promises, grades and the undoing of what was done. */
class RecordsTest {
  @TempDir Path folder;
  private Workshop workshop;
  private Blanks blanks;

  @BeforeEach
  void open() throws Exception {
    workshop = WorkshopFixture.create(folder);
    blanks = workshop.blanks();
  }

  @AfterEach
  void close() throws Exception {
    workshop.close();
  }

  @ParameterizedTest
  @CsvSource({"a-1, A-1", "Ä-1, ä-1", "straße, STRASSE", "25/014, 25/014"})
  void tagsAndOrderNumbersAreUniqueButForCase(String first, String second) throws Exception {
    blanks.enter(WorkshopFixture.sheet(first));
    refused(
        "there is a blank " + first + " already",
        () -> blanks.enter(WorkshopFixture.sheet(second)));
    assertEquals(first, blanks.require(second).tag());
    workshop.orders().enter(WorkshopFixture.order(first));
    refused(
        "there is an order " + first + " already",
        () -> workshop.orders().enter(WorkshopFixture.order(second)));
    assertEquals(first, workshop.orders().require(second).number());
  }

  @Test
  void whatIsNotThereIsSaid() {
    refused("there is no blank 9 in this workshop", () -> blanks.require("9"));
    refused("there is no order 9 in this workshop", () -> workshop.orders().require("9"));
    refused("there is no run 9", () -> workshop.runs().run(9));
  }

  @Test
  void aNewerCaliperEntryFollowsAndTheOlderStays() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.sheet("25-014", 12.5));
    blanks.addCaliperEntry(blank, WorkshopFixture.sheet("25-014", 12.0), "turned");
    List<CaliperEntry> entries = blanks.caliperEntries(blank);
    assertEquals(List.of("entered", "turned"), entries.stream().map(CaliperEntry::why).toList());
    assertEquals(entries.get(1), blanks.caliperNow(blank));
    assertEquals(
        12.0, WorkshopFixture.read(blanks.caliperNow(blank).document()).shaft().taper().depthAt(0));
    assertTrue(blanks.caliperNow(blank).document().contains("\"x-shelf\":7"));
  }

  private void reach(Blank blank, String stage) throws Exception {
    String sheet = WorkshopFixture.sheet(blank.tag()).json().replace("near size", stage);
    blanks.addCaliperEntry(blank, WorkshopFixture.read(sheet), "turned");
  }

  @Test
  void stagesFollowOneAnother() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.sheet("25-014"));
    reach(blank, "planed");
    reach(blank, "planed");
    reach(blank, BlankState.FINISHED_CUE);
    assertEquals(
        List.of("near size", "planed", "finished cue"),
        blanks.stages(blank).stream().map(StageEntry::stage).toList());
    assertFalse(blanks.state(blank).isFree());
  }

  @Test
  void aBlankThatEndedIsNotFree() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.untested("25-014"));
    assertTrue(blanks.state(blank).isFree());
    blanks.end(blank, "split");
    assertEquals(new BlankState(null, null, "split"), blanks.state(blank));
    assertFalse(blanks.state(blank).isFree());
    refused("25-014 was ended before", () -> blanks.end(blank, "split"));
    workshop.actions().undoLast();
    assertTrue(blanks.state(blank).isFree());
  }

  @Test
  void anOrderIsChangedByANewerVersion() throws Exception {
    Orders orders = workshop.orders();
    WorkshopOrder first = orders.enter(WorkshopFixture.order("R-0007"));
    WorkshopOrder second = orders.change(first, WorkshopFixture.order("r-0007"));
    assertEquals("R-0007", second.number());
    assertEquals(second, orders.require("R-0007"));
    assertEquals(first.document(), orders.version(first.versionId()));
    workshop.actions().undoLast();
    assertEquals(first, orders.require("R-0007"));
  }

  @Test
  void aBlankIsPromisedToOneOrderAndAnOrderHasOneBlank() throws Exception {
    Blank one = blanks.enter(WorkshopFixture.sheet("25-001"));
    Blank two = blanks.enter(WorkshopFixture.sheet("25-002"));
    WorkshopOrder first = workshop.orders().enter(WorkshopFixture.order("R-1"));
    WorkshopOrder second = workshop.orders().enter(WorkshopFixture.order("R-2"));
    Promises promises = workshop.promises();
    promises.make(one, first);
    assertEquals("R-1", blanks.state(one).promisedTo());
    assertEquals(List.of(second), workshop.orders().open());
    refused("25-001 is promised to R-1 already", () -> promises.make(one, second));
    refused("25-001 is promised to R-1 already", () -> promises.make(two, first));
    refused("25-002 is not promised to R-2", () -> promises.release(two, second));
    promises.release(one, first);
    assertEquals(Optional.empty(), promises.blankOf(first));
    assertEquals(List.of(first, second), workshop.orders().open());
    promises.make(one, second);
    assertEquals(Optional.of(one), promises.blankOf(second));
  }

  @Test
  void whatIsNoBlankAnyMoreIsNotPromised() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.sheet("25-001"));
    WorkshopOrder order = workshop.orders().enter(WorkshopFixture.order("R-1"));
    reach(blank, BlankState.FINISHED_CUE);
    refused("25-001 is a finished cue", () -> workshop.promises().make(blank, order));
    reach(blank, "planed");
    blanks.end(blank, "broken");
    refused("25-001 was ended: broken", () -> workshop.promises().make(blank, order));
    Blank other = blanks.enter(WorkshopFixture.sheet("25-002"));
    workshop.orders().end(order, "called off");
    refused("order R-1 was ended: called off", () -> workshop.promises().make(other, order));
    assertEquals(List.of(), workshop.orders().open());
  }

  @Test
  void theLastActionIsUndoneOneAfterTheOther() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.sheet("25-001"));
    WorkshopOrder order = workshop.orders().enter(WorkshopFixture.order("R-1"));
    workshop.promises().make(blank, order);
    workshop.promises().release(blank, order);
    workshop.notes().add(blank, "a fine one");
    Actions actions = workshop.actions();
    assertEquals("noted on 25-001", actions.undoLast().what());
    assertEquals(List.of(), workshop.notes().of(blank));
    assertEquals("took back the promise of 25-001 to R-1", actions.undoLast().what());
    assertEquals("R-1", blanks.state(blank).promisedTo());
    assertEquals("promised 25-001 to R-1", actions.undoLast().what());
    assertNull(blanks.state(blank).promisedTo());
    assertEquals("took order R-1", actions.undoLast().what());
    assertEquals(Optional.empty(), workshop.orders().find("R-1"));
    assertEquals("entered blank 25-001", actions.undoLast().what());
    assertEquals(Optional.empty(), blanks.find("25-001"));
    refused("there is nothing to undo", actions::undoLast);
    assertEquals("25-001", blanks.enter(WorkshopFixture.sheet("25-001")).tag());
  }

  @Test
  void aBlankThatHasARunIsNotUndone() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.sheet("25-001"));
    workshop
        .runs()
        .add(blank, WorkshopFixture.sheet("25-001"), RunOrigin.TYPED, WorkshopFixture.answered());
    refused(
        "\"entered blank 25-001\" cannot be undone: there are runs on that blank",
        () -> workshop.actions().undoLast());
  }

  @Test
  void whatIsDoneIsSigned() throws Exception {
    workshop.settings().set(Settings.INITIALS, "KM");
    Blank blank = blanks.enter(WorkshopFixture.sheet("25-001"));
    workshop.notes().add(blank, "straight grain");
    assertEquals("KM", workshop.notes().of(blank).get(0).initials());
    assertEquals("KM", workshop.actions().newest(1).get(0).initials());
    workshop.settings().set(Settings.INITIALS, "AB");
    assertEquals(Optional.of("AB"), workshop.settings().get(Settings.INITIALS));
  }

  @Test
  void aGradeStaysWithAllThatItRestsOn() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.sheet("25-001"));
    Run run =
        workshop
            .runs()
            .add(
                blank,
                WorkshopFixture.sheet("25-001"),
                RunOrigin.TYPED,
                WorkshopFixture.answered());
    WorkshopOrder order = workshop.orders().enter(WorkshopFixture.order("R-1"));
    GradeBasis basis =
        new GradeBasis(order.versionId(), blanks.caliperNow(blank).id(), List.of(run.id()), 0.95);
    long first = workshop.grades().add(blank, basis, "{\"grade\":\"meets\"}", null);
    workshop.orders().change(order, WorkshopFixture.order("R-1"));
    blanks.addCaliperEntry(blank, WorkshopFixture.sheet("25-001", 12), "turned");
    workshop.grades().add(blank, basis, "{\"grade\":\"softer\"}", null);
    List<Grade> grades = workshop.grades().of(blank);
    assertEquals(2, grades.size());
    assertEquals(first, grades.get(0).id());
    assertEquals("{\"grade\":\"meets\"}", grades.get(0).answer());
    assertEquals(basis, grades.get(0).basis());
    assertEquals("R-1", grades.get(0).orderNumber());
    assertEquals("test", grades.get(0).program());
    assertEquals(order.document(), workshop.orders().version(basis.orderVersionId()));
  }

  @Test
  void theRackShowsEachBlankAsItStandsNow() throws Exception {
    Blank tested = blanks.enter(WorkshopFixture.sheet("b"));
    Blank untested = blanks.enter(WorkshopFixture.untested("A"));
    Run run =
        workshop
            .runs()
            .add(tested, WorkshopFixture.sheet("b"), RunOrigin.TYPED, WorkshopFixture.answered());
    List<RackRow> rows = workshop.rack().rows();
    assertEquals(List.of(untested, tested), rows.stream().map(RackRow::blank).toList());
    assertNull(rows.get(0).modulusMPa());
    assertEquals(12340, rows.get(1).modulusMPa());
    assertEquals("near size", rows.get(1).state().stage());
    assertEquals("2026-03-01T08:00:00Z", rows.get(1).testedAt());
    workshop.runs().setAside(run, "the shaft slipped");
    assertNull(workshop.rack().rows().get(1).modulusMPa());
  }

  @Test
  void guessesStandBesideTheirRuns() throws Exception {
    Blank blank = blanks.enter(WorkshopFixture.sheet("b"));
    Run run =
        workshop
            .runs()
            .add(blank, WorkshopFixture.sheet("b"), RunOrigin.TYPED, WorkshopFixture.answered());
    workshop.guesses().add(run.id(), 3.9);
    assertEquals(3.9, workshop.guesses().all().get(0).stiffnessNPerMm());
    assertEquals(run.id(), workshop.guesses().all().get(0).runId());
    assertThrows(WorkshopException.class, () -> workshop.guesses().add(run.id(), -1));
    workshop.actions().undoLast();
    assertEquals(List.of(), workshop.guesses().all());
  }

  @Test
  void theNewestCalibrationIsInForceAndTheOlderAreKept() throws Exception {
    assertEquals(Optional.empty(), workshop.calibrations().inForce());
    workshop.calibrations().add("{\"by\":\"KM\"}");
    workshop.calibrations().add("{\"by\":\"AB\"}");
    assertEquals("{\"by\":\"AB\"}", workshop.calibrations().inForce().get().document());
    assertEquals(2, workshop.calibrations().all().size());
    workshop.actions().undoLast();
    assertEquals("{\"by\":\"KM\"}", workshop.calibrations().inForce().get().document());
  }

  @Test
  void readingsOfACheckRodStandInTheOrderTheyWereMade() throws Exception {
    CheckReadings readings = workshop.checkReadings();
    for (String answer : List.of("{\"day\":1}", "{\"day\":2}")) {
      readings.add(new CheckReading(null, "rod 1", "{}", answer));
    }
    readings.add(new CheckReading(null, "rod 2", "{}", "{}"));
    assertEquals(
        List.of("{\"day\":1}", "{\"day\":2}"),
        readings.of("rod 1").stream().map(CheckReading::answer).toList());
  }

  private static void refused(String message, Executable action) {
    assertEquals(message, assertThrows(WorkshopException.class, action).getMessage());
  }
}
