package sagwright.workshop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** The file itself: made, opened again, migrated, copied, and what happens when it is not well. */
class WorkshopTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("workshop.db");
  }

  @Test
  void whatWasEnteredIsThereWhenOpenedAgain() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
    }
    try (Workshop workshop = Workshop.open(file(), WorkshopFixture.keeper())) {
      assertEquals("25-014", workshop.blanks().require("25-014").tag());
      workshop.requireWhole();
    }
  }

  @Test
  void theFoldersOnTheWayAreMade() throws Exception {
    Path deep = folder.resolve("a/b/workshop.db");
    Workshop.openOrCreate(deep, WorkshopFixture.keeper()).close();
    assertTrue(Files.exists(deep));
  }

  @Test
  void openingDoesNotMakeAWorkshopWhereNoneIs() {
    refused("there is no workshop " + file(), () -> open());
    assertFalse(Files.exists(file()));
  }

  @Test
  void theFileKeepsEveryCommitThroughAPowerCut() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder);
        Database database = Database.open(workshop.file(), false)) {
      assertEquals("wal", pragma(database, "journal_mode"));
      assertEquals("2", pragma(database, "synchronous")); // FULL
      assertEquals("1", pragma(database, "foreign_keys"));
    }
  }

  private static String pragma(Database database, String name) throws WorkshopException {
    return database.read(handle -> handle.select("pragma " + name).mapTo(String.class).one());
  }

  @Test
  void everyTableIsStrict() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder);
        Database database = Database.open(workshop.file(), false)) {
      List<String> loose =
          database.read(
              handle ->
                  handle
                      .select(
                          "select name from pragma_table_list where type = 'table'"
                              + " and strict = 0 and name not like 'sqlite%'")
                      .mapTo(String.class)
                      .list());
      assertEquals(List.of(), loose);
    }
  }

  @Test
  void aMeasurementIsNeitherChangedNorDeleted() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      Blank blank = workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
      workshop
          .runs()
          .add(blank, WorkshopFixture.sheet("25-014"), RunOrigin.TYPED, WorkshopFixture.answered());
      try (Database database = Database.open(workshop.file(), false)) {
        for (String table :
            List.of("caliper_entry", "run", "run_closing", "evaluation", "blank", "action")) {
          String column =
              table.equals("action") ? "at" : table.equals("evaluation") ? "run_id" : "action_id";
          assertThrows(
              WorkshopException.class,
              () -> database.write(h -> h.execute("update " + table + " set " + column + " = 1")),
              table);
          assertThrows(
              WorkshopException.class,
              () -> database.write(h -> h.execute("delete from " + table)),
              table);
        }
      }
    }
  }

  @Test
  void anOlderFileIsCopiedAndBroughtUpToDate() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
    }
    int known = Migrations.SCRIPTS.size();
    Migrations next = followedBy("next-for-tests.sql");
    try (Database database = Database.open(file(), false)) {
      next.bringUpToDate(database);
      assertEquals("" + (known + 1), pragma(database, "user_version"));
      assertEquals(
          List.of("25-014"),
          database.read(
              handle -> handle.select("select tag from blank_shelf").mapTo(String.class).list()));
      next.bringUpToDate(database);
    }
    Path copy = folder.resolve("workshop.db.version-" + known);
    assertEquals(Set.of("workshop.db", copy.getFileName().toString()), names());
    try (Workshop before = Workshop.open(copy, WorkshopFixture.keeper())) {
      assertEquals("25-014", before.blanks().require("25-014").tag());
    }
  }

  @Test
  void aMigrationThatFailsLeavesTheFileAsItWas() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
    }
    Migrations broken = followedBy("broken-for-tests.sql");
    try (Database database = Database.open(file(), false)) {
      assertThrows(WorkshopException.class, () -> broken.bringUpToDate(database));
    }
    try (Workshop workshop = open()) {
      assertEquals("25-014", workshop.blanks().require("25-014").tag());
    }
  }

  /** This program's scripts with one more. */
  private static Migrations followedBy(String script) {
    List<String> scripts = new ArrayList<>(Migrations.SCRIPTS);
    scripts.add(script);
    return new Migrations(scripts);
  }

  @Test
  void aFileOfANewerProgramIsLeftAlone() throws Exception {
    WorkshopFixture.create(folder).close();
    execute("pragma user_version = 99");
    byte[] before = Files.readAllBytes(file());
    refused(
        "the workshop "
            + file()
            + " was written by a newer Sagwright (its version is 99, this program knows "
            + Migrations.SCRIPTS.size()
            + "):"
            + " use that one",
        () -> open());
    assertArrayEquals(before, Files.readAllBytes(file()));
  }

  @Test
  void aDatabaseOfAnotherProgramIsLeftAlone() throws Exception {
    execute("create table recipe (name text)");
    refused(
        "the file " + file() + " is a database of another program, not a workshop", () -> open());
    refused(
        "the file " + file() + " is a database of another program, not a workshop",
        () -> WorkshopFixture.create(folder));
  }

  @Test
  void aFileThatIsNoDatabaseIsRefused() throws Exception {
    Files.writeString(file(), "{\"format\": \"sagwright-sheet/1\"}".repeat(100));
    refused("the workshop " + file() + " is damaged, or is no workshop", () -> open());
  }

  @Test
  void aDamagedFileIsRefusedInOneLine() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      for (int i = 0; i < 60; i++) {
        workshop.blanks().enter(WorkshopFixture.sheet("25-" + i));
      }
    }
    byte[] bytes = Files.readAllBytes(file());
    for (int i = 4096; i < bytes.length; i++) {
      bytes[i] = (byte) (bytes[i] ^ 0x5a);
    }
    Files.write(file(), bytes);
    refused(
        "the workshop " + file() + " is damaged: bring back a backup of it, and keep this file",
        () -> {
          try (Workshop workshop = open()) {
            workshop.blanks().all();
          }
        });
  }

  @Test
  void aFileThatWasCutShortIsRefusedInOneLine() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      for (int i = 0; i < 60; i++) {
        workshop.blanks().enter(WorkshopFixture.sheet("25-" + i));
      }
    }
    byte[] bytes = Files.readAllBytes(file());
    Files.write(file(), java.util.Arrays.copyOf(bytes, bytes.length / 2));
    refused(
        "the workshop " + file() + " is damaged: bring back a backup of it, and keep this file",
        () -> {
          try (Workshop workshop = open()) {
            workshop.requireWhole();
          }
        });
  }

  @Test
  void aPlaceThatCannotBeWrittenIsSaidInOneLine() throws Exception {
    Path plain = Files.createFile(folder.resolve("plain"));
    refusedAtAll(() -> Workshop.openOrCreate(plain.resolve("w.db"), WorkshopFixture.keeper()));
    refusedAtAll(() -> Workshop.openOrCreate(Path.of("/proc/w.db"), WorkshopFixture.keeper()));
    refused(
        "the workshop " + folder + " is a folder, not a file",
        () -> Workshop.openOrCreate(folder, WorkshopFixture.keeper()));
  }

  @Test
  void aWorkshopThatAnotherProgramWritesIsSaidToBeBusy() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder);
        Connection other = DriverManager.getConnection("jdbc:sqlite:" + file())) {
      other.createStatement().execute("begin immediate");
      refused(
          "the workshop "
              + file()
              + " is being written by another program: try again when that is done",
          () -> workshop.blanks().enter(WorkshopFixture.sheet("25-014")));
      other.createStatement().execute("rollback");
      workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
    }
  }

  @Test
  void aFullDiskIsSaidInOneLineAndNothingIsHalfKept() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      workshop.blanks().enter(WorkshopFixture.sheet("25-0"));
    }
    try (Database database = Database.open(file(), false)) {
      int pages = Integer.parseInt(pragma(database, "page_count"));
      pragma(
          database, "max_page_count = " + (pages + 1)); // as full as a disk can be made in a test
      Actions actions = new Actions(database, WorkshopFixture.keeper().clock());
      Blanks blanks = new Blanks(database, actions);
      WorkshopException full =
          assertThrows(
              WorkshopException.class,
              () -> {
                for (int i = 1; i < 1000; i++) {
                  blanks.enter(WorkshopFixture.sheet("25-" + i));
                }
              });
      assertEquals(
          "the workshop " + file() + " cannot be written: the disk is full: make room on it",
          full.getMessage());
      int kept = blanks.all().size();
      assertEquals("entered blank 25-" + (kept - 1), actions.newest(1).get(0).what());
    }
  }

  @Test
  void aBackupHoldsWhatIsNewestToo() throws Exception {
    Path copy = folder.resolve("copy.db");
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
      workshop.backUpTo(copy);
      refused("the file " + copy + " is there already", () -> workshop.backUpTo(copy));
    }
    try (Workshop workshop = Workshop.open(copy, WorkshopFixture.keeper())) {
      assertEquals("25-014", workshop.blanks().require("25-014").tag());
    }
  }

  private Workshop open() throws WorkshopException {
    return Workshop.open(file(), WorkshopFixture.keeper());
  }

  private void execute(String sql) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file())) {
      connection.createStatement().execute(sql);
    }
  }

  private Set<String> names() throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  private static void refused(String message, Executable action) {
    assertEquals(message, assertThrows(WorkshopException.class, action).getMessage());
  }

  private static void refusedAtAll(Executable action) {
    String message = assertThrows(WorkshopException.class, action).getMessage();
    assertFalse(message.isBlank() || message.contains("\n"), message);
    assertEquals(
        message, new String(message.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
  }
}
