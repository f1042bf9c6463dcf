package sagwright.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IntakeTest {
  @TempDir Path folder;
  private Workshop workshop;
  private Intake intake;

  @BeforeEach
  void open() throws Exception {
    workshop = WorkshopFixture.create(folder);
    intake = workshop.intake(WorkshopFixture.READER);
  }

  @AfterEach
  void close() throws Exception {
    workshop.close();
  }

  @Test
  void aSheetBecomesABlankWithItsRun() throws Exception {
    Intake.Arrival arrival =
        intake.sheet(WorkshopFixture.sheet("25-014"), WorkshopFixture.answered(), false);
    assertEquals("25-014", arrival.blank().tag());
    assertEquals(RunOrigin.IMPORTED, arrival.run().origin());
    assertEquals("near size", workshop.blanks().state(arrival.blank()).stage());
    assertNull(intake.sheet(WorkshopFixture.untested("25-015"), null, false).run());
  }

  @Test
  void whatIsThereAlreadyIsRefusedAndLeavesAllAsItWas() throws Exception {
    Blank blank =
        intake.sheet(WorkshopFixture.sheet("a-1"), WorkshopFixture.answered(), false).blank();
    List<Action> before = workshop.actions().newest(100);
    assertEquals(
        "shaft.tag: a-1 is in this workshop already",
        assertThrows(
                WorkshopException.class,
                () -> intake.sheet(WorkshopFixture.sheet("A-1"), WorkshopFixture.answered(), false))
            .getMessage());
    intake.order(WorkshopFixture.order("R-1"), false);
    assertEquals(
        "order: R-1 is in this workshop already",
        assertThrows(
                WorkshopException.class, () -> intake.order(WorkshopFixture.order("r-1"), false))
            .getMessage());
    assertEquals(before.size() + 1, workshop.actions().newest(100).size());
    assertEquals(1, workshop.runs().of(blank).size());
  }

  @Test
  void addingJoinsTheRunToTheBlankAndAShaftThatDiffersToItsEntries() throws Exception {
    Blank blank =
        intake.sheet(WorkshopFixture.sheet("a-1"), WorkshopFixture.answered(), false).blank();
    intake.sheet(WorkshopFixture.sheet("A-1"), WorkshopFixture.answered(), true);
    assertEquals(1, workshop.blanks().caliperEntries(blank).size());
    intake.sheet(WorkshopFixture.sheet("a-1", 12), WorkshopFixture.answered(), true);
    assertEquals(2, workshop.blanks().caliperEntries(blank).size());
    assertEquals(3, workshop.runs().of(blank).size());
    intake.sheet(WorkshopFixture.sheet("new"), WorkshopFixture.answered(), true);
    assertEquals(2, workshop.blanks().all().size());
  }

  @Test
  void addingMakesANewerVersionOfAnOrder() throws Exception {
    WorkshopOrder first = intake.order(WorkshopFixture.order("R-1"), true);
    WorkshopOrder second = intake.order(WorkshopFixture.order("r-1"), true);
    assertEquals(first.id(), second.id());
    assertEquals(List.of(second), workshop.orders().all());
  }
}
