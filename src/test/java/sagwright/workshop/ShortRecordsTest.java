package sagwright.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.sheet.Sheet;

class ShortRecordsTest {
  private static final String WHOLE_ANSWER =
      "{\"modulusMPa\":12340.000000000002,\"modulusStdUncertaintyMPa\":54.929218933393294,"
          + "\"assumed\":[\"modulusToShearRatio\"],\"warnings\":[]}";

  @TempDir Path folder;

  private final Sheet sawn =
      WorkshopFixture.read(
          "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\"25-015\",\"species\":\"Été\","
              + "\"section\":\"rectangle\",\"lengthMm\":1502.5,\"massG\":811.3,\"splice\":{"
              + "\"fromMm\":1030,\"coreHalfAtButtMm\":4,\"densityKgM3\":1120,\"modulusMPa\":15500},"
              + "\"stations\":[{\"xMm\":1.5,\"depthMm\":32.25,\"widthMm\":33.1},"
              + "{\"xMm\":740.25,\"depthMm\":32.3},{\"xMm\":1490,\"depthMm\":32.1}]}}");

  @Test
  void whatIsPackedIsWhatTheDocumentSays() {
    for (Sheet sheet : List.of(sawn, WorkshopFixture.untested("25-014"))) {
      ShortShaft shaft = ShortShaft.of(sheet);
      requireSame(shaft, ShortShaft.unpacked(shaft.packed()));
    }
  }

  private static void requireSame(ShortShaft want, ShortShaft got) {
    assertEquals(want.taper().shape(), got.taper().shape());
    assertEquals(want.taper().stations(), got.taper().stations());
    assertEquals(want.taper().lengthMm(), got.taper().lengthMm());
    assertEquals(want.massG(), got.massG());
    assertEquals(want.species(), got.species());
    assertEquals(want.isSpliced(), got.isSpliced());
  }

  @Test
  void aRunCountsWithEveryDigitOfItsAnswer() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      Blank blank = workshop.blanks().enter(WorkshopFixture.untested("25-014"));
      Run run =
          workshop
              .runs()
              .add(
                  blank,
                  WorkshopFixture.sheet("25-014"),
                  RunOrigin.TYPED,
                  RunOutcome.answered(WHOLE_ANSWER));
      workshop
          .runs()
          .add(
              blank,
              WorkshopFixture.sheet("25-014"),
              RunOrigin.TYPED,
              RunOutcome.without("no contact"));
      ShortRecord kept = workshop.shortRecords(WorkshopFixture.READER).of(blank);
      assertEquals(1, kept.counting().size());
      ShortRun counting = kept.counting().get(0);
      assertEquals(run.id(), counting.runId());
      assertEquals(12340.000000000002, counting.answer().modulusMPa());
      assertEquals(54.929218933393294, counting.answer().modulusStdUncertaintyMPa());
      assertEquals("[\"modulusToShearRatio\"]", counting.answer().assumed());
      assertNull(counting.answer().ratio());
      assertEquals(workshop.blanks().caliperNow(blank).id(), kept.caliperEntryId());
      String basis = kept.basis();
      workshop.runs().evaluateAgain(run, RunOutcome.answered(WHOLE_ANSWER));
      assertTrue(
          !basis.equals(workshop.shortRecords(WorkshopFixture.READER).of(blank).basis()),
          "a newer answer is another basis");
    }
  }

  @Test
  void aMovedRunCountsForTheBlankThatItBelongsTo() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      Blank wrong = workshop.blanks().enter(WorkshopFixture.untested("25-014"));
      Blank right = workshop.blanks().enter(sawn);
      Run run =
          workshop
              .runs()
              .add(
                  wrong,
                  WorkshopFixture.sheet("25-014"),
                  RunOrigin.TYPED,
                  RunOutcome.answered(WHOLE_ANSWER));
      workshop
          .runs()
          .move(
              run,
              right,
              new Runs.OnOtherShaft(sawn.json(), RunOutcome.answered(WHOLE_ANSWER)),
              "the other shaft lay there");
      ShortRecords records = workshop.shortRecords(WorkshopFixture.READER);
      assertEquals(List.of(), records.of(wrong).counting());
      assertEquals(1, records.of(right).counting().size());
      assertEquals(2, records.all().size());
    }
  }

  @Test
  void aFileOfTheFirstVersionIsReadFromItsDocuments() throws Exception {
    Path file;
    ShortAnswer packed;
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      file = workshop.file();
      Blank blank = workshop.blanks().enter(sawn);
      workshop.runs().add(blank, sawn, RunOrigin.TYPED, RunOutcome.answered(WHOLE_ANSWER));
      packed = answer(workshop);
    }
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.executeUpdate(
          "drop table caliper_figures; drop table surveyed_wood; drop table grain_entry;"
              + " drop table evaluation_figures;"
              + " drop table run_move_sheet;"
              + " drop view if exists taper_template_now; drop table taper_template_name;"
              + " drop table taper_template; pragma user_version = 1;");
    }
    try (Workshop workshop = Workshop.open(file, WorkshopFixture.keeper())) {
      assertTrue(Files.exists(file.resolveSibling("workshop.db.version-1")), "a copy is kept");
      ShortRecord kept = workshop.shortRecords(WorkshopFixture.READER).all().get(0);
      requireSame(ShortShaft.of(sawn), kept.shaft());
      assertEquals(packed, answer(workshop));
    }
  }

  private static ShortAnswer answer(Workshop workshop) throws Exception {
    return workshop.shortRecords(WorkshopFixture.READER).all().get(0).counting().get(0).answer();
  }
}
