package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EvaluateAndForecastCommandTest {
  private static final String SHEET = "docs/examples/25-014.json";
  private static final String ORDER = "docs/examples/R-0007.json";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  /** The example run was drawn about 4.103408682270373 N/mm, that is 12340 MPa. */
  @Test
  void evaluateAnswersTheExample() throws IOException {
    CommandRun run = CommandRun.of("evaluate", SHEET, "--json");
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    JsonNode answer = JSON.readTree(run.out());
    assertEquals("25-014", answer.get("tag").asText());
    assertEquals(12340, answer.get("modulusMPa").asDouble(), 0.003 * 12340);
    double sum = 0;
    for (JsonNode part : answer.get("uncertaintyBudget")) {
      sum += Math.pow(part.get("contributionMPa").asDouble(), 2);
    }
    double u = answer.get("modulusStdUncertaintyMPa").asDouble();
    assertEquals(u, Math.sqrt(sum), 1e-9 * u);
  }

  @Test
  void sameSeedSameDigits() throws IOException {
    String first =
        CommandRun.of("evaluate", SHEET, "--json", "--draws", "2000", "--seed", "5").out();
    String again =
        CommandRun.of("evaluate", SHEET, "--json", "--draws", "2000", "--seed", "5").out();
    assertEquals(first, again);
    assertEquals(2000, JSON.readTree(first).at("/monteCarlo/draws").asInt());
  }

  @Test
  void aBadSheetAmongGoodOnesStopsNoneAndNamesItsKey() throws IOException {
    Path bad =
        file(
            "bad.json",
            Files.readString(Path.of(SHEET)).replaceFirst("\"depthMm\": 12.5", "\"depthMm\": -1"));
    CommandRun run = CommandRun.of("evaluate", SHEET, bad.toString(), SHEET, "--json");
    assertEquals(2, run.exitCode());
    assertEquals(3, run.outLines().length);
    JsonNode error = JSON.readTree(run.outLines()[1]);
    assertEquals(bad.toString(), error.get("file").asText());
    assertTrue(error.get("error").asText().contains("shaft.stations[0].depthMm"));
    assertEquals(1, run.errLines().length);
    assertTrue(run.err().contains("bad.json") && run.err().contains("shaft.stations[0].depthMm"));
  }

  @Test
  void aRunWithNoLoadingIsTooPoor() throws IOException {
    Path flat =
        file(
            "flat.json",
            """
            {"format": "sagwright-sheet/1",
             "shaft": {"stations": [{"xMm": 0, "depthMm": 12}, {"xMm": 1400, "depthMm": 29}]},
             "setup": {"supportAMm": 100, "supportBMm": 1100, "loadMm": 600, "gaugeMm": 600},
             "handRead": {"loadN": [5, 5, 5, 5], "deflectionMm": [1, 1, 1, 1]}}
            """);
    CommandRun run = CommandRun.of("evaluate", flat.toString(), "--json");
    assertEquals(3, run.exitCode());
    assertEquals("", run.out());
    assertEquals(1, run.errLines().length);
  }

  @Test
  void aWrongOptionIsOneLine() {
    CommandRun run = CommandRun.of("evaluate", SHEET, "--colour");
    assertEquals(2, run.exitCode());
    assertEquals(1, run.errLines().length);
    assertTrue(run.err().contains("--colour"));
  }

  /** Figures of docs/contract.md, section 5; the modulus of the example run is within 0.1 %. */
  @Test
  void forecastAnswersTheExample() throws IOException {
    CommandRun run = CommandRun.of("forecast", SHEET, "--order", ORDER, "--json");
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    JsonNode answer = JSON.readTree(run.out());
    assertEquals("meets", answer.get("grade").asText());
    assertEquals(2.295855986282626, answer.get("stiffnessNPerMm").asDouble(), 2e-3);
    assertEquals(475.148676906, answer.get("massG").asDouble(), 1e-6);
    assertEquals(428.465539499, answer.get("balanceFromButtMm").asDouble(), 1e-6);
    assertEquals(1.88813422819799, answer.get("leastSpareMm").asDouble(), 1e-9);
    assertTrue(answer.get("warnings").get(0).asText().startsWith("balance"));
  }

  @Test
  void aBadOrderNamesItsKey() throws IOException {
    Path order =
        file(
            "order.json",
            Files.readString(Path.of(ORDER)).replace("\"fromMm\": 1030.0", "\"fromMm\": 1500"));
    CommandRun run = CommandRun.of("forecast", SHEET, "--order", order.toString());
    assertEquals(2, run.exitCode());
    assertTrue(run.err().contains("finish.splice.fromMm"), run.err());
  }

  @Test
  void tablesForPeopleHoldNoRawDoubles() {
    CommandRun run = CommandRun.of("evaluate", SHEET);
    assertTrue(run.out().contains("± is 95 %"));
    assertFalse(run.out().matches("(?s).*\\d\\.\\d{6,}.*"));
  }
}
