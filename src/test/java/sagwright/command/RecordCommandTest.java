package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.NullModem;
import sagwright.bench.PlayedHead;
import sagwright.bench.PseudoTerminal;
import sagwright.bench.Reading;
import sagwright.bench.Waiting;
import sagwright.bench.WireFormat;
import sagwright.workshop.Keeper;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;

/** Whole tests over two real serial ports with a crossed cable between them. */
class RecordCommandTest {
  private static final String SHEET = "docs/examples/25-014.json";
  private static final String CALIBRATION = "docs/examples/calibration.json";
  private static final String SET_UP = "docs/examples/setup.json";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;
  private String workshop;

  @BeforeEach
  void takeTheBlankIn() {
    workshop = folder.resolve("workshop.db").toString();
    CommandRun run =
        CommandRun.of("import", SHEET, "docs/examples/R-0007.json", "--workshop", workshop);
    assertEquals(0, run.exitCode(), run.err());
  }

  private static CompletableFuture<CommandRun> emulate(String port, String... more) {
    return emulateSheet(SHEET, port, more);
  }

  private static CompletableFuture<CommandRun> emulateSheet(
      String sheet, String port, String... more) {
    String[] fixed = {
      "emulate", "--port", port, "--sheet", sheet, "--calibration", CALIBRATION, "--speed", "5"
    };
    String[] all = new String[fixed.length + more.length];
    System.arraycopy(fixed, 0, all, 0, fixed.length);
    System.arraycopy(more, 0, all, fixed.length, more.length);
    return CompletableFuture.supplyAsync(() -> CommandRun.of(all));
  }

  private CommandRun record(String port, String... more) {
    return recordBy(CALIBRATION, port, more);
  }

  private CommandRun recordBy(String calibration, String port, String... more) {
    String[] fixed = {
      "record",
      "--port",
      port,
      "--workshop",
      workshop,
      "--blank",
      "25-014",
      "--calibration",
      calibration,
      "--setup",
      SET_UP,
      "--json"
    };
    String[] all = new String[fixed.length + more.length];
    System.arraycopy(fixed, 0, all, 0, fixed.length);
    System.arraycopy(more, 0, all, fixed.length, more.length);
    return CommandRun.of(all);
  }

  private JsonNode answerOf(String... command) throws IOException {
    CommandRun run = CommandRun.of(command);
    assertEquals(0, run.exitCode(), run.err());
    return JSON.readTree(run.out());
  }

  @Test
  void whatRecordAnswersIsTheSheetsOwn() throws Exception {
    try (NullModem modem = NullModem.open()) {
      CompletableFuture<CommandRun> head = emulate(modem.farPath());
      CommandRun recorded = record(modem.nearPath(), "--order", "R-0007");
      assertEquals(0, recorded.exitCode(), recorded.err());
      head.get(60, TimeUnit.SECONDS);
      JsonNode answer = JSON.readTree(recorded.out());
      JsonNode sheets = answerOf("evaluate", SHEET, "--json");
      double stiffness = sheets.get("stiffnessNPerMm").asDouble();
      assertEquals(stiffness, answer.get("stiffnessNPerMm").asDouble(), 5e-4 * stiffness);
      double modulus = sheets.get("modulusMPa").asDouble();
      assertEquals(modulus, answer.get("modulusMPa").asDouble(), 5e-4 * modulus);
      assertEquals("meets", answer.at("/grade/grade").asText());
      assertEquals(0, answer.at("/line/missing").asInt());

      JsonNode record = answerOf("blank", "--workshop", workshop, "--blank", "25-014", "--json");
      assertEquals(2, record.get("runs").size());
      assertEquals(answer.get("run"), record.at("/runs/1/run"));
      assertEquals("meets", record.at("/grades/0/grade").asText());
    }
  }

  @Test
  void aRunFarUnderItsLoadSaysSoWhereverItIsRead() throws Exception {
    Path touch = folder.resolve("touch.json");
    Files.writeString(touch, JSON.writeValueAsString(tenthOfTheLoad(SHEET)));
    String warning = "the load went only to 2.0 N of the 20.0 N asked";
    try (NullModem modem = NullModem.open()) {
      CompletableFuture<CommandRun> head = emulateSheet(touch.toString(), modem.farPath());
      CommandRun recorded = record(modem.nearPath(), "--order", "R-0007");
      assertEquals(0, recorded.exitCode(), recorded.err());
      head.get(60, TimeUnit.SECONDS);
      JsonNode answer = JSON.readTree(recorded.out());
      assertTrue(answer.get("warnings").toString().contains(warning), answer.toString());
      assertTrue(answer.at("/grade/warnings").toString().contains(warning), answer.toString());
      JsonNode record = answerOf("blank", "--workshop", workshop, "--blank", "25-014", "--json");
      assertEquals("[]", record.at("/runs/0/warnings").toString());
      assertTrue(record.at("/runs/1/warnings").toString().contains(warning), record.toString());
    }
  }

  private static JsonNode tenthOfTheLoad(String sheet) throws IOException {
    JsonNode json = JSON.readTree(Path.of(sheet).toFile());
    for (String key : new String[] {"loadN", "deflectionMm"}) {
      ArrayNode values = (ArrayNode) json.at("/run/" + key);
      for (int i = 0; i < values.size(); i++) {
        values.set(i, values.get(i).asDouble() / 10);
      }
    }
    return json;
  }

  @Test
  void theExampleTakesNoRealWood() throws Exception {
    Keeper keeper = new Keeper(InstantSource.system(), "test");
    try (Workshop marked = Workshop.open(Path.of(workshop), keeper)) {
      marked.settings().set(Settings.EXAMPLE, "2026-11-28");
    }
    CommandRun run = record("/dev/null");
    assertEquals(2, run.exitCode(), run.err());
    assertTrue(
        run.err().contains("is the example workshop: no real wood belongs in it"), run.err());
  }

  @Test
  void lostAndGarbledLinesAreCountedAndTheAnswerStands() throws Exception {
    try (NullModem modem = NullModem.open()) {
      CompletableFuture<CommandRun> head =
          emulate(modem.farPath(), "--drop", "0.02", "--flip", "0.02");
      CommandRun recorded = record(modem.nearPath());
      assertEquals(0, recorded.exitCode(), recorded.err());
      head.get(60, TimeUnit.SECONDS);
      JsonNode answer = JSON.readTree(recorded.out());
      assertTrue(answer.at("/line/missing").asInt() > 0);
      assertTrue(answer.at("/line/refused").asInt() > 0);
      assertEquals(4.1034, answer.get("stiffnessNPerMm").asDouble(), 0.003 * 4.1034);
    }
  }

  @Test
  void aRestartOnTheWayUpEndsTheRunWhichIsKeptWithoutAnAnswer() throws Exception {
    try (NullModem modem = NullModem.open()) {
      CompletableFuture<CommandRun> head = emulate(modem.farPath(), "--restart");
      CommandRun recorded = record(modem.nearPath());
      head.get(60, TimeUnit.SECONDS);
      assertEquals(3, recorded.exitCode(), recorded.out());
      assertEquals(1, recorded.errLines().length);
      JsonNode record = answerOf("blank", "--workshop", workshop, "--blank", "25-014", "--json");
      assertEquals(2, record.get("runs").size());
      assertTrue(record.at("/runs/1/stiffnessNPerMm").isNull());
    }
  }

  @Test
  void aPortThatIsNotThereIsOneLineAndLeavesNoRun() throws IOException {
    CommandRun recorded = record(folder.resolve("no-port").toString());
    assertEquals(2, recorded.exitCode());
    assertEquals(1, recorded.errLines().length);
    assertTrue(recorded.err().contains("--port"), recorded.err());
    JsonNode record = answerOf("blank", "--workshop", workshop, "--blank", "25-014", "--json");
    assertEquals(1, record.get("runs").size());
    assertEquals("", CommandRun.of("salvage", "--workshop", workshop, "--json").out());
  }

  @Test
  void aSilentPortEndsWithTheTimeOut() {
    try (NullModem modem = NullModem.open()) {
      CommandRun recorded = record(modem.nearPath(), "--timeout", "1");
      assertEquals(3, recorded.exitCode());
      assertEquals(1, recorded.errLines().length);
      assertTrue(recorded.err().contains("no reading came"), recorded.err());
    }
  }

  @Test
  void aHeadWithoutAGaugeIsNamedAsTheCauseWhereNoAnswerCanBeHad() throws Exception {
    List<byte[]> lines = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      double loadN = Math.max(0, Math.min(i - 150, 350 - i) / 10.0);
      int counts = 1000 + (int) Math.round(loadN / 2.5e-5) + i % 3 * 40;
      lines.add(WireFormat.bytes(new Reading(i, i * 12_500L, counts, null, 2)));
    }
    try (PseudoTerminal port = PseudoTerminal.heldOpen();
        PlayedHead head = new PlayedHead(port, lines, 800).start()) {
      CommandRun recorded = record(port.path());
      assertEquals(3, recorded.exitCode(), recorded.out());
      assertEquals(1, recorded.errLines().length);
      assertTrue(recorded.err().contains("the gauge is missing or silent"), recorded.err());
      assertTrue(head.sent() > 400);
    }
  }

  @Test
  void aRunThatCannotBeClosedSaysThatItIsKeptAndIsSalvagedLater() throws Exception {
    try (NullModem modem = NullModem.open();
        Connection other = DriverManager.getConnection("jdbc:sqlite:" + workshop);
        Statement hold = other.createStatement()) {
      CompletableFuture<CommandRun> head = emulate(modem.farPath());
      CompletableFuture<CommandRun> recording =
          CompletableFuture.supplyAsync(() -> record(modem.nearPath()));
      Path journal = Path.of(workshop + "-runs", "run-2.wire");
      Waiting.until(() -> journal.toFile().length() > 1000, () -> "no journal");
      hold.execute("begin immediate"); // another program writes, for longer than anyone waits
      CommandRun recorded = recording.get(60, TimeUnit.SECONDS);
      head.get(60, TimeUnit.SECONDS);
      assertEquals(2, recorded.exitCode(), recorded.out());
      assertEquals(1, recorded.errLines().length);
      assertTrue(recorded.err().contains("run 2 is not closed yet"), recorded.err());
      hold.execute("rollback");
    }
    JsonNode salvaged = answerOf("salvage", "--workshop", workshop, "--json");
    assertEquals(2, salvaged.get("run").asInt());
    assertEquals(4.1034, salvaged.at("/answer/stiffnessNPerMm").asDouble(), 0.003 * 4.1034);
  }

  @Test
  void aRunUnderACalibrationThatHeldNoMoreIsMarkedAndSoIsItsGrade() throws Exception {
    Path old = folder.resolve("old.json");
    Files.writeString(
        old,
        Files.readString(Path.of(CALIBRATION))
            .replaceFirst("\"made\": *\"[^\"]*\"", "\"made\": \"2020-03-02T09:00:00Z\""));
    try (NullModem modem = NullModem.open()) {
      CompletableFuture<CommandRun> head = emulate(modem.farPath());
      CommandRun recorded = recordBy(old.toString(), modem.nearPath(), "--order", "R-0007");
      assertEquals(0, recorded.exitCode(), recorded.err());
      head.get(60, TimeUnit.SECONDS);
      JsonNode answer = JSON.readTree(recorded.out());
      for (String where : new String[] {"/warnings", "/grade/warnings"}) {
        assertTrue(answer.at(where).toString().contains("no valid calibration"), where);
      }
    }
  }

  @Test
  void aSpeedOfNothingIsOneLineForWhoeverOpensThePort() throws Exception {
    for (CommandRun run :
        new CommandRun[] {
          record("no-port", "--baud", "0"),
          emulate("no-port", "--baud", "0").get(),
          CommandRun.of("window", "--port", "no-port", "--baud", "0")
        }) {
      assertEquals(2, run.exitCode());
      assertEquals(1, run.errLines().length);
      assertTrue(run.err().contains("--baud"), run.err());
    }
  }
}
