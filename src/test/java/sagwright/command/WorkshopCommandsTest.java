package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that work on a workshop file: docs/contract.md, section 7. */
class WorkshopCommandsTest {
  private static final Path SHEET = Path.of("docs/examples/25-014.json");
  private static final Path ORDER = Path.of("docs/examples/R-0007.json");
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private Path workshop() {
    return folder.resolve("workshop.db");
  }

  private CommandRun on(String... args) {
    return onWith("", args);
  }

  private CommandRun onWith(String input, String... args) {
    List<String> all = new ArrayList<>(Arrays.asList(args));
    all.addAll(List.of("--workshop", workshop().toString()));
    return CommandRun.withInput(input, all.toArray(String[]::new));
  }

  private static String sheet(String tag) throws IOException {
    ObjectNode sheet = (ObjectNode) JSON.readTree(SHEET.toFile());
    ((ObjectNode) sheet.get("shaft")).put("tag", tag);
    return JSON.writeValueAsString(sheet);
  }

  private static JsonNode answer(CommandRun run) throws IOException {
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    assertEquals(1, run.outLines().length);
    return JSON.readTree(run.out());
  }

  private static void refused(int exitCode, String line, CommandRun run) {
    assertEquals(line, run.err().strip());
    assertEquals(exitCode, run.exitCode());
    assertEquals("", run.out());
  }

  @Test
  void anExportedSheetGivesTheSameAnswerElsewhereToTheLastDigit() throws IOException {
    JsonNode imported = answer(on("import", SHEET.toString(), "--json"));
    assertEquals(SHEET.toString(), imported.get("file").asText());
    assertEquals("25-014", imported.get("tag").asText());
    assertTrue(imported.get("run").isIntegralNumber());
    CommandRun exported = on("export", "--blank", "25-014");
    Path copy = Files.writeString(folder.resolve("copy.json"), exported.out());
    assertEquals(
        CommandRun.of("evaluate", SHEET.toString(), "--json").out(),
        CommandRun.of("evaluate", copy.toString(), "--json").out());
    Path other = folder.resolve("other.db");
    CommandRun.of("import", copy.toString(), "--workshop", other.toString());
    assertEquals(
        exported.out(),
        CommandRun.of("export", "--blank", "25-014", "--workshop", other.toString()).out());
  }

  @Test
  void theRecordOfABlankHoldsItsRunsAndGrades() throws IOException {
    on("import", SHEET.toString(), ORDER.toString());
    on("import", SHEET.toString(), "--add");
    JsonNode graded = answer(on("grade", "--blank", "25-014", "--order", "R-0007", "--json"));
    JsonNode forecast =
        JSON.readTree(
            CommandRun.of(
                    "forecast",
                    SHEET.toString(),
                    SHEET.toString(),
                    "--order",
                    ORDER.toString(),
                    "--json")
                .out());
    for (String key : List.of("stiffnessNPerMm", "massG", "chanceWithinTolerance", "grade")) {
      assertEquals(forecast.get(key), graded.get(key), key);
    }
    JsonNode blank = answer(on("blank", "--blank", "25-014", "--json"));
    assertEquals("25-014", blank.get("tag").asText());
    assertEquals(2, blank.get("runs").size());
    JsonNode evaluated = JSON.readTree(CommandRun.of("evaluate", SHEET.toString(), "--json").out());
    JsonNode run = blank.get("runs").get(0);
    assertEquals(evaluated.get("stiffnessNPerMm"), run.get("stiffnessNPerMm"));
    assertEquals(evaluated.get("modulusMPa"), run.get("modulusMPa"));
    assertFalse(run.get("setAside").asBoolean());
    assertEquals(0, run.at("/line/refused").asInt());
    JsonNode grade = blank.get("grades").get(0);
    assertEquals(graded.get("gradeId"), grade.get("gradeId"));
    assertEquals("R-0007", grade.get("order").asText());
    assertEquals(graded.get("grade"), grade.get("grade"));
    assertEquals(1, blank.get("caliperEntries").size());
    String forPeople = on("blank", "--blank", "25-014").out();
    assertTrue(forPeople.contains("run 1") && forPeople.contains("for R-0007"), forPeople);
  }

  @Test
  void aGradeTakesTheShapeThatTheCalipersSaidLast() throws IOException {
    on("import", SHEET.toString(), ORDER.toString());
    ObjectNode turned = (ObjectNode) JSON.readTree(sheet("25-014"));
    turned.remove(List.of("run", "setup"));
    int last = turned.at("/shaft/stations").size() - 1;
    ((ObjectNode) turned.at("/shaft/stations/" + last)).put("depthMm", 20.0).remove("widthMm");
    Path file = Files.writeString(folder.resolve("turned.json"), turned.toString());
    assertTrue(answer(on("import", file.toString(), "--add", "--json")).get("run").isNull());
    JsonNode graded = answer(on("grade", "--blank", "25-014", "--order", "R-0007", "--json"));
    assertFalse(graded.get("fits").asBoolean());
  }

  @Test
  void whatIsThereAlreadyIsRefusedAndTheOthersAreTaken() throws IOException {
    on("import", SHEET.toString());
    Path bad = Files.writeString(folder.resolve("bad.json"), "{\"format\":\"sagwright-sheet/1\"}");
    Path good = Files.writeString(folder.resolve("good.json"), sheet("25-015"));
    CommandRun run = on("import", SHEET.toString(), bad.toString(), good.toString(), "--json");
    assertEquals(2, run.exitCode());
    assertEquals(
        "shaft.tag: 25-014 is in this workshop already",
        JSON.readTree(run.outLines()[0]).get("error").asText());
    assertEquals("shaft: is missing", JSON.readTree(run.outLines()[1]).get("error").asText());
    assertEquals("25-015", JSON.readTree(run.outLines()[2]).get("tag").asText());
    assertEquals(2, run.errLines().length);
    assertEquals(1, answer(on("blank", "--blank", "25-014", "--json")).get("runs").size());
  }

  @Test
  void aFolderStandsForItsDocumentsAndADashForLines() throws IOException {
    Path documents = Files.createDirectory(folder.resolve("documents"));
    Files.writeString(documents.resolve("b.json"), sheet("b"));
    Files.writeString(documents.resolve("a.JSON"), sheet("a"));
    Files.writeString(documents.resolve("c.txt"), "no document");
    CommandRun run = on("import", documents.toString(), "--json");
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("a", JSON.readTree(run.outLines()[0]).get("tag").asText());
    assertEquals("b", JSON.readTree(run.outLines()[1]).get("tag").asText());
    String lines = sheet("l-1") + "\n\n" + "{}\n" + sheet("l-2");
    CommandRun read = onWith(lines, "import", "-", "--json");
    assertEquals(2, read.exitCode());
    assertEquals("l-1", JSON.readTree(read.outLines()[0]).get("tag").asText());
    assertEquals("-", JSON.readTree(read.outLines()[0]).get("file").asText());
    assertEquals("format: is missing", JSON.readTree(read.outLines()[1]).get("error").asText());
    assertEquals("l-2", JSON.readTree(read.outLines()[2]).get("tag").asText());
    assertEquals("-, line 3: format: is missing", read.err().strip());
    Path none = Files.createDirectory(folder.resolve("none"));
    refused(2, none + ": the folder holds no .json file", on("import", none.toString()));
  }

  @Test
  void aRunThatIsTooPoorIsKeptAndCountsForNothing() throws IOException {
    ObjectNode flat = (ObjectNode) JSON.readTree(sheet("flat"));
    flat.remove("run");
    flat.set("handRead", JSON.readTree("{\"loadN\":[5,5,5,5],\"deflectionMm\":[1,1,1,1]}"));
    Path file = Files.writeString(folder.resolve("flat.json"), flat.toString());
    CommandRun imported = on("import", file.toString(), ORDER.toString(), "--json");
    assertEquals(0, imported.exitCode());
    assertTrue(imported.err().contains("gave no answer"), imported.err());
    JsonNode run = answer(on("blank", "--blank", "flat", "--json")).get("runs").get(0);
    assertTrue(run.get("stiffnessNPerMm").isNull());
    assertFalse(run.get("noAnswer").asText().isEmpty());
    refused(3, "flat has no run that counts", on("export", "--blank", "flat"));
    refused(3, "flat has no run that counts", on("grade", "--blank", "flat", "--order", "R-0007"));
  }

  @Test
  void aPromiseIsMadeAndTakenBack() throws IOException {
    on("import", SHEET.toString(), ORDER.toString());
    String[] promise = {"promise", "--blank", "25-014", "--order", "r-0007"};
    assertTrue(
        answer(on("promise", "--blank", "25-014", "--order", "r-0007", "--json"))
            .get("promised")
            .asBoolean());
    assertEquals(
        "R-0007", answer(on("blank", "--blank", "25-014", "--json")).get("promisedTo").asText());
    refused(2, "25-014 is promised to R-0007 already", on(promise));
    CommandRun undone = on("promise", "--blank", "25-014", "--order", "R-0007", "--undo");
    assertEquals(0, undone.exitCode());
    assertTrue(answer(on("blank", "--blank", "25-014", "--json")).get("free").asBoolean());
    refused(
        2,
        "25-014 is not promised to R-0007",
        on("promise", "--blank", "25-014", "--order", "R-0007", "--undo"));
  }

  @Test
  void whatIsNotThereIsSaidInOneLine() throws IOException {
    for (String command : List.of("export", "blank")) {
      refused(2, "there is no workshop " + workshop(), on(command, "--blank", "25-014"));
    }
    assertFalse(Files.exists(workshop()));
    on("import", SHEET.toString());
    refused(2, "there is no blank 9 in this workshop", on("blank", "--blank", "9"));
    refused(
        2,
        "there is no order 9 in this workshop",
        on("grade", "--blank", "25-014", "--order", "9"));
    Path none = folder.resolve("none.json");
    refused(2, none + ": there is no such file", on("import", none.toString()));
    Path noTag =
        Files.writeString(folder.resolve("no-tag.json"), sheet("x").replace("\"tag\":\"x\",", ""));
    refused(2, noTag + ": shaft.tag: is missing", on("import", noTag.toString()));
  }

  @Test
  void aDamagedWorkshopIsSaidInOneLine() throws IOException {
    Files.writeString(workshop(), "not a database at all, only words ".repeat(40));
    refused(
        2,
        "the workshop " + workshop() + " is damaged, or is no workshop",
        on("blank", "--blank", "25-014"));
  }
}
