package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.job.InventedBlanks;
import sagwright.job.InventedBlanks.Spec;

/** rank, promise and allocate, to the letter: docs/contract.md, section 7. */
class ChoosingCommandsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final double ASK = InventedBlanks.finishedStiffnessNPerMm(12000);

  @TempDir Path folder;

  @BeforeEach
  void fill() {
    bring(
        InventedBlanks.order("R-0007", ASK, 5),
        InventedBlanks.order("R-0008", ASK * 12500 / 12000, 5),
        InventedBlanks.sheet(Spec.ash("25-001", 12300)),
        InventedBlanks.sheet(Spec.ash("25-002", 12000)),
        InventedBlanks.untested(Spec.ash("25-003", 12000)),
        InventedBlanks.sheet(Spec.ash("25-004", 12000).withButt(27)));
  }

  private void bring(String... documents) {
    CommandRun run =
        CommandRun.withInput(String.join("\n", documents), "import", "-", "--workshop", workshop());
    assertEquals(0, run.exitCode(), run.err());
  }

  private String workshop() {
    return folder.resolve("workshop.db").toString();
  }

  private CommandRun on(String... args) {
    List<String> all = new ArrayList<>(Arrays.asList(args));
    all.addAll(List.of("--workshop", workshop()));
    return CommandRun.of(all.toArray(String[]::new));
  }

  private List<JsonNode> lines(String... args) throws IOException {
    CommandRun run = on(args);
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    List<JsonNode> lines = new ArrayList<>();
    for (String line : run.outLines()) {
      lines.add(JSON.readTree(line));
    }
    return lines;
  }

  private List<String> rankedTags(String order) throws IOException {
    return lines("rank", "--order", order, "--json").stream()
        .map(line -> line.get("tag").asText())
        .toList();
  }

  @Test
  void rankPrintsALineABlankBestFirst() throws IOException {
    List<JsonNode> lines = lines("rank", "--order", "R-0007", "--json");
    assertEquals(
        List.of("25-002", "25-001", "25-003", "25-004"),
        lines.stream().map(line -> line.get("tag").asText()).toList());
    List<String> keys = new ArrayList<>();
    lines.get(0).fieldNames().forEachRemaining(keys::add);
    assertEquals(
        List.of(
            "order",
            "tag",
            "cutFromMm",
            "fits",
            "leastSpareMm",
            "leastSpareAtMm",
            "stiffnessNPerMm",
            "stiffnessStdUncertaintyNPerMm",
            "massG",
            "balanceFromButtMm",
            "chanceWithinTolerance",
            "grade",
            "alsoAsked",
            "chanceOfAll",
            "assumed",
            "warnings"),
        keys);
    assertEquals(ASK, lines.get(0).get("stiffnessNPerMm").asDouble(), 1e-6 * ASK);
    assertEquals(2, lines.get(2).size());
    assertTrue(lines.get(2).get("cannot").asText().startsWith("no run"));
    assertTrue(lines.get(3).get("cannot").asText().startsWith("does not fit"));
    assertEquals(lines.subList(0, 3), lines("rank", "--order", "R-0007", "--json", "--most", "3"));
  }

  @Test
  void aLineOfRankIsWhatGradeStoresButForTheFrequency() throws IOException {
    JsonNode ranked = lines("rank", "--order", "R-0007", "--json").get(0);
    JsonNode graded = lines("grade", "--blank", "25-002", "--order", "R-0007", "--json").get(0);
    ranked
        .fieldNames()
        .forEachRemaining(key -> assertEquals(graded.get(key), ranked.get(key), key));
    assertTrue(graded.get("firstBendingHz").asDouble() > 0);
  }

  @Test
  void aPromiseAndItsUndoShowInEveryRank() throws IOException {
    JsonNode promised = lines("promise", "--blank", "25-002", "--order", "R-0007", "--json").get(0);
    assertTrue(promised.get("promised").asBoolean());
    assertEquals(List.of("25-002", "25-001", "25-003", "25-004"), rankedTags("R-0007"));
    assertEquals(List.of("25-001", "25-003", "25-004"), rankedTags("R-0008"));
    CommandRun again = on("promise", "--blank", "25-002", "--order", "R-0008");
    assertEquals(2, again.exitCode());
    assertEquals("25-002 is promised to R-0007 already", again.err().strip());
    lines("promise", "--blank", "25-002", "--order", "R-0007", "--undo", "--json");
    assertTrue(rankedTags("R-0008").contains("25-002"));
  }

  @Test
  void allocatePairsTheOpenOrders() throws IOException {
    JsonNode answer = lines("allocate", "--json").get(0);
    assertEquals(3, answer.size());
    assertEquals(2, answer.get("pairs").size());
    double sum = 0;
    for (JsonNode pair : answer.get("pairs")) {
      assertEquals(3, pair.size());
      sum += pair.get("chance").asDouble();
      JsonNode ranked =
          lines("rank", "--order", pair.get("order").asText(), "--json").stream()
              .filter(line -> line.get("tag").equals(pair.get("tag")))
              .findFirst()
              .orElseThrow();
      assertEquals(ranked.get("chanceOfAll"), pair.get("chance"));
    }
    assertEquals(sum, answer.get("sumOfChances").asDouble(), 1e-15);
    on("promise", "--blank", "25-002", "--order", "R-0007");
    on("promise", "--blank", "25-001", "--order", "R-0008");
    JsonNode none = lines("allocate", "--json").get(0);
    assertEquals("{\"sumOfChances\":0.0,\"pairs\":[],\"without\":[]}", none.toString());
    bring(InventedBlanks.order("R-0009", ASK, 5));
    assertEquals("[\"R-0009\"]", lines("allocate", "--json").get(0).get("without").toString());
  }

  @Test
  void peopleReadTables() {
    String ranked = on("rank", "--order", "R-0007").out();
    assertTrue(ranked.contains("25-002") && ranked.contains("meets"), ranked);
    assertTrue(ranked.contains("no run that gave an answer"), ranked);
    String allocated = on("allocate").out();
    assertTrue(allocated.contains("first come") && allocated.contains("25-001"), allocated);
    on("promise", "--blank", "25-002", "--order", "R-0007");
    assertTrue(on("rank", "--order", "R-0007").out().contains("25-002 *"), "its own is marked");
  }

  @Test
  void whatIsWrongIsSaidInOneLine() {
    CommandRun unknown = on("rank", "--order", "R-9999", "--json");
    assertEquals(2, unknown.exitCode());
    assertEquals("there is no order R-9999 in this workshop", unknown.err().strip());
    assertEquals("", unknown.out());
    assertEquals(2, on("rank", "--order", "R-0007", "--most", "0").exitCode());
    CommandRun nowhere =
        CommandRun.of("allocate", "--workshop", folder.resolve("none.db").toString());
    assertEquals(2, nowhere.exitCode());
    assertEquals(1, nowhere.errLines().length);
    assertFalse(folder.resolve("none.db").toFile().exists());
  }
}
