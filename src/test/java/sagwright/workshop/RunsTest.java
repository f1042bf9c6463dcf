package sagwright.workshop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.LineStatistics;
import sagwright.bench.LoadLimits;
import sagwright.run.Samples;
import sagwright.sheet.Sheet;

/** Runs from their first byte to their place on a record. */
class RunsTest {
  @TempDir Path folder;
  private Workshop workshop;
  private Blank blank;

  @BeforeEach
  void open() throws Exception {
    workshop = WorkshopFixture.create(folder);
    blank = workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
  }

  @AfterEach
  void close() throws Exception {
    workshop.close();
  }

  @Test
  void aRunKeepsEveryByteItsSheetAndItsAnswer() throws Exception {
    RunJournal journal = workshop.runs().start(WorkshopFixture.start(blank));
    journal.append(bytes("$SG,1,\r\n"));
    journal.append(new byte[] {(byte) 0xff, 0, 10});
    Run run = workshop.runs().close(journal, WorkshopFixture.closing(blank));
    assertEquals(List.of(run), workshop.runs().of(blank));
    assertEquals(Optional.of(run), workshop.runs().latestCounting(blank));
    assertEquals(RunOrigin.BENCH, run.origin());
    assertEquals(new LineStatistics(312, 2, 1, 5), run.line());
    assertEquals(WorkshopFixture.answered(), run.outcome());
    assertEquals(WorkshopFixture.sheet("25-014").json(), workshop.runs().sheet(run));
    byte[] wire = workshop.runs().wire(run);
    assertEquals("$SG,1,\r\n", new String(wire, 0, 8, StandardCharsets.US_ASCII));
    assertArrayEquals(new byte[] {(byte) 0xff, 0, 10}, java.util.Arrays.copyOfRange(wire, 8, 11));
    assertEquals(List.of(), journalFiles());
  }

  @Test
  void aRunThatGoesOnIsNotOnTheRecordAndNotCutOff() throws Exception {
    RunJournal journal = workshop.runs().start(WorkshopFixture.start(blank));
    assertEquals(List.of(), workshop.runs().of(blank));
    assertEquals(0, workshop.cutOffRuns().count());
    assertEquals(List.of(), workshop.cutOffRuns().takeAll());
    try (Workshop other = Workshop.open(workshop.file(), WorkshopFixture.keeper())) {
      assertEquals(0, other.cutOffRuns().count());
      assertEquals(List.of(), other.cutOffRuns().takeAll());
    }
    journal.append(bytes("still here\n"));
    Run run = workshop.runs().close(journal, WorkshopFixture.closing(blank));
    assertEquals("still here\n", new String(workshop.runs().wire(run), StandardCharsets.US_ASCII));
  }

  @Test
  void aRunThatWasLetGoIsClosedLaterWithWhatHadCome() throws Exception {
    RunJournal journal = workshop.runs().start(WorkshopFixture.start(blank));
    journal.append(bytes("one\ntwo\ntor"));
    journal.close();
    assertEquals(1, workshop.cutOffRuns().count());
    CutOffRun cut = workshop.cutOffRuns().takeAll().get(0);
    assertEquals("one\ntwo\ntor", new String(cut.wire(), StandardCharsets.US_ASCII));
    assertEquals(WorkshopFixture.start(blank), cut.start());
    assertEquals(List.of(), workshop.cutOffRuns().takeAll(), "taken once");
    Run run = workshop.runs().close(cut.journal(), WorkshopFixture.closing(blank));
    assertEquals("one\ntwo\ntor", new String(workshop.runs().wire(run), StandardCharsets.US_ASCII));
    assertEquals(0, workshop.cutOffRuns().count());
    assertEquals(List.of(), journalFiles());
  }

  @Test
  void aRunThatWasCutOffBeforeItsFirstByteIsClosedToo() throws Exception {
    RunJournal journal = workshop.runs().start(WorkshopFixture.start(blank));
    journal.close();
    for (Path file : journalFiles()) {
      Files.delete(file);
    }
    CutOffRun cut = workshop.cutOffRuns().takeAll().get(0);
    assertEquals(0, cut.wire().length);
    RunClosing closing =
        new RunClosing(
            "the run was cut off",
            cut.start().document(),
            LineStatistics.NONE,
            RunOutcome.without("there is nothing in it"),
            null);
    Run run = workshop.runs().close(cut.journal(), closing);
    assertEquals("there is nothing in it", run.outcome().noAnswer());
    assertFalse(run.counts());
  }

  @Test
  void whatACrashLeftBehindAClosedRunIsTakenAway() throws Exception {
    RunJournal closed = workshop.runs().start(WorkshopFixture.start(blank));
    workshop.runs().close(closed, WorkshopFixture.closing(blank));
    RunJournal goingOn = workshop.runs().start(WorkshopFixture.start(blank));
    Path runs = folder.resolve("workshop.db-runs");
    Files.createFile(runs.resolve("run-" + closed.runId() + ".wire"));
    Files.createFile(runs.resolve("run-" + closed.runId() + ".lock"));
    assertEquals(List.of(), workshop.cutOffRuns().takeAll());
    assertEquals(2, journalFiles().size());
    assertTrue(Files.exists(runs.resolve("run-" + goingOn.runId() + ".wire")));
    goingOn.close();
  }

  @Test
  void aRunRemembersItsOrderAndItsCalibration() throws Exception {
    WorkshopOrder order = workshop.orders().enter(WorkshopFixture.order("R-1"));
    RunStart start =
        new RunStart(
            blank,
            WorkshopFixture.START,
            WorkshopFixture.sheet("25-014").documentWithoutReadings(),
            "{\"format\":\"sagwright-calibration/1\"}",
            new LoadLimits(19.5, 24.25),
            order);
    workshop.runs().start(start).close();
    CutOffRun cut = workshop.cutOffRuns().takeAll().get(0);
    assertEquals(start, cut.start());
    cut.journal().close();
  }

  @Test
  void aJournalThatIsOverTakesNoMore() throws Exception {
    RunJournal journal = workshop.runs().start(WorkshopFixture.start(blank));
    workshop.runs().close(journal, WorkshopFixture.closing(blank));
    assertThrows(IOException.class, () -> journal.append(bytes("late\n")));
  }

  @Test
  void aRunSetAsideStaysAndCountsNoMore() throws Exception {
    Runs runs = workshop.runs();
    Run first = add("25-014", WorkshopFixture.answered());
    Run second = add("25-014", WorkshopFixture.answered());
    runs.setAside(second, "the shaft slipped");
    assertEquals("the shaft slipped", runs.run(second.id()).setAsideWhy());
    assertEquals(Optional.of(first), runs.latestCounting(blank));
    runs.keep(second);
    assertNull(runs.run(second.id()).setAsideWhy());
    workshop.actions().undoLast();
    assertTrue(runs.run(second.id()).isSetAside());
    workshop.actions().undoLast();
    assertEquals(List.of(first.id(), second.id()), ids(runs.counting(blank)));
  }

  @Test
  void aRunThatGaveNoAnswerStaysAndCountsForNothing() throws Exception {
    Run run = add("25-014", RunOutcome.without("no loading branch"));
    assertEquals(List.of(run), workshop.runs().of(blank));
    assertEquals(Optional.empty(), workshop.runs().latestCounting(blank));
    workshop.runs().evaluateAgain(run, WorkshopFixture.answered());
    assertTrue(workshop.runs().latestCounting(blank).isPresent());
  }

  @Test
  void aRunIsMovedToTheBlankItBelongsToWithATraceAndAnUndo() throws Exception {
    Blank right = workshop.blanks().enter(WorkshopFixture.sheet("25-015"));
    Run run = add("25-014", WorkshopFixture.answered());
    Runs runs = workshop.runs();
    Runs.OnOtherShaft there = WorkshopFixture.onShaft("25-015");
    runs.move(run, right, there, "the wrong tag was scanned");
    assertEquals(there.document(), runs.sheet(run));
    assertEquals(List.of(), runs.of(blank));
    assertEquals(
        new Run.Moved("25-014", "the wrong tag was scanned"), runs.of(right).get(0).moved());
    assertThrows(WorkshopException.class, () -> runs.move(run, right, there, "again"));
    workshop.actions().undoLast();
    assertEquals(List.of(run.id()), ids(runs.of(blank)));
    assertNull(runs.of(blank).get(0).moved());
    runs.move(run, right, there, "the wrong tag was scanned");
    runs.move(run, blank, WorkshopFixture.onShaft("25-014"), "it was right after all");
    assertEquals(List.of(run.id()), ids(runs.of(blank)));
  }

  @Test
  void runsStandInTheOrderInWhichTheyWereMade() throws Exception {
    Sheet newer = WorkshopFixture.sheet("25-014");
    Sheet older = WorkshopFixture.read(newer.json().replace("2026-03-01T08", "2026-02-01T08"));
    Runs runs = workshop.runs();
    Run second = runs.add(blank, newer, RunOrigin.IMPORTED, WorkshopFixture.answered());
    Run first = runs.add(blank, older, RunOrigin.IMPORTED, WorkshopFixture.answered());
    assertEquals(List.of(first.id(), second.id()), ids(runs.of(blank)));
    assertEquals(Optional.of(second), runs.latestCounting(blank));
    assertEquals("2026-02-01T08:00:00Z", runs.of(blank).get(0).startedAt());
  }

  @Test
  void readingsComeOutBitForBitAsTheyWentIn() throws Exception {
    Run run = add("25-014", WorkshopFixture.answered());
    Samples in = (Samples) WorkshopFixture.sheet("25-014").readings();
    Samples out = (Samples) WorkshopFixture.read(workshop.runs().sheet(run)).readings();
    assertArrayEquals(in.timeS(), out.timeS(), 0);
    assertArrayEquals(in.loadN(), out.loadN(), 0);
    assertArrayEquals(in.deflectionMm(), out.deflectionMm(), 0);
  }

  private Run add(String tag, RunOutcome outcome) throws WorkshopException {
    return workshop
        .runs()
        .add(
            workshop.blanks().require(tag),
            WorkshopFixture.sheet(tag),
            RunOrigin.IMPORTED,
            outcome);
  }

  private static List<Long> ids(List<Run> runs) {
    return runs.stream().map(Run::id).toList();
  }

  private List<Path> journalFiles() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("workshop.db-runs"))) {
      return files.toList();
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
