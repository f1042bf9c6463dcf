package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** docs/contract.md, section 8, with the shaft of survey_reference.py. */
class SurveyCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final double[][] SET_UPS_AND_STIFFNESS = {
    {100, 1100, 600, 600, 4.0091},
    {50, 1450, 700, 700, 1.8733},
    {50, 650, 350, 330, 9.4628},
    {700, 1450, 1050, 1050, 27.972},
    {400, 1000, 700, 700, 24.559},
    {60, 460, 260, 260, 23.769},
    {1000, 1450, 1200, 1230, 136.66}
  };

  @TempDir Path folder;
  private final List<String> sheets = new ArrayList<>();

  @BeforeEach
  void writeSheets() throws IOException {
    for (int i = 0; i < SET_UPS_AND_STIFFNESS.length; i++) {
      sheets.add(sheet("run" + i + ".json", SET_UPS_AND_STIFFNESS[i], "12.50"));
    }
  }

  private String sheet(String name, double[] s, String tipDepth) throws IOException {
    StringBuilder loads = new StringBuilder();
    StringBuilder deflections = new StringBuilder();
    for (int i = 0; i < 9; i++) {
      loads.append(i == 0 ? "" : ", ").append(s[4] * i);
      deflections.append(i == 0 ? "" : ", ").append(i);
    }
    String text =
        String.format(
            Locale.ROOT,
            """
            {"format": "sagwright-sheet/1",
             "shaft": {"tag": "25-031", "species": "European ash", "massG": 420, "stations": [
               {"xMm": 0, "depthMm": %s, "widthMm": 12.48},
               {"xMm": 400, "depthMm": 17.40, "widthMm": 17.50},
               {"xMm": 800, "depthMm": 22.60, "widthMm": 22.50},
               {"xMm": 1200, "depthMm": 27.50, "widthMm": 27.60},
               {"xMm": 1490, "depthMm": 31.00, "widthMm": 31.10}]},
             "setup": {"supportAMm": %s, "supportBMm": %s, "loadMm": %s, "gaugeMm": %s,
               "frameComplianceMmPerN": 0.002},
             "modulusToShearRatio": 14,
             "handRead": {"loadN": [%s], "deflectionMm": [%s]}}
            """,
            tipDepth,
            s[0],
            s[1],
            s[2],
            s[3],
            loads,
            deflections);
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private CommandRun run(String command, List<String> files, String... options) {
    return CommandRun.of(
        Stream.of(Stream.of(command), files.stream(), Stream.of(options))
            .flatMap(s -> s)
            .toArray(String[]::new));
  }

  /** Digits: survey_reference.csv. */
  @Test
  void theAnswerIsOneObjectWithTheModelsAndWhatIsProposed() throws IOException {
    CommandRun run = run("survey", sheets, "--json");
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    assertEquals(1, run.outLines().length);
    JsonNode answer = JSON.readTree(run.out());
    assertEquals("25-031", answer.get("tag").asText());
    assertEquals(7, answer.get("runs").asInt());
    assertEquals("straight", answer.get("proposed").asText());
    assertEquals("[]", answer.get("runsStandingOut").toString());
    JsonNode one = answer.get("models").get(0);
    assertEquals("one", one.get("kind").asText());
    assertEquals(12062.7771, one.get("modulusMPa").asDouble(), 0.01);
    assertEquals(42.669567, one.get("modulusStdUncertaintyMPa").asDouble(), 0.01);
    assertEquals(235.6406714, one.get("chiSquared").asDouble(), 0.001);
    assertEquals(1, one.get("parameters").asInt());
    assertEquals(one.get("chiSquared").asDouble() + 2 + 4.0 / 5, one.get("aicc").asDouble(), 1e-9);
    JsonNode straight = answer.get("models").get(1);
    assertEquals(11497.10625, straight.get("modulusAtTipMPa").asDouble(), 0.01);
    assertEquals(62.748859, straight.get("modulusAtButtStdUncertaintyMPa").asDouble(), 0.01);
    JsonNode pieces = answer.get("models").get(2).get("pieces");
    assertEquals(0, pieces.get(0).get("fromMm").asDouble());
    assertEquals(pieces.get(0).get("toMm").asDouble(), pieces.get(1).get("fromMm").asDouble());
    assertEquals(1490, pieces.get(1).get("toMm").asDouble());
    assertTrue(answer.get("assumed").toString().contains("positionUncertaintyMm"));
  }

  @Test
  void aBadSheetSpoilsTheAnswerAndIsNamed() throws IOException {
    sheets.add(sheet("bad.json", SET_UPS_AND_STIFFNESS[0], "-1"));
    CommandRun run = run("survey", sheets, "--json");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertEquals(1, run.errLines().length);
    assertTrue(run.err().contains("bad.json") && run.err().contains("stations[0].depthMm"));
  }

  @Test
  void aSheetOfAnotherShaftIsNamed() throws IOException {
    sheets.add(sheet("other.json", SET_UPS_AND_STIFFNESS[0], "12.9"));
    CommandRun run = run("survey", sheets, "--json");
    assertEquals(2, run.exitCode());
    assertEquals(1, run.errLines().length);
    assertTrue(run.err().contains("other.json") && run.err().contains("shaft.stations"));
  }

  @Test
  void oneSheetIsNoSurvey() {
    CommandRun run = run("survey", sheets.subList(0, 1));
    assertEquals(2, run.exitCode());
    assertEquals(1, run.errLines().length);
  }

  @Test
  void theTableForPeopleSaysWhatIsProposedAndWhy() {
    CommandRun run = run("survey", sheets);
    assertEquals(0, run.exitCode());
    assertTrue(run.out().contains("proposed: straight"), run.out());
    assertFalse(run.out().matches("(?s).*\\d\\.\\d{6,}.*"));
  }

  /** The blank's butt is stiffer than its tip: the cut moves with what is asked. */
  @Test
  void forecastWithSeveralSheetsTakesWhatTheSurveyProposes() throws IOException {
    String order = "docs/examples/R-0007.json";
    CommandRun run = run("forecast", sheets, "--order", order, "--json");
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    assertEquals(1, run.outLines().length);
    double together = JSON.readTree(run.out()).get("stiffnessNPerMm").asDouble();
    double u = JSON.readTree(run.out()).get("stiffnessStdUncertaintyNPerMm").asDouble();
    CommandRun alone = run("forecast", sheets.subList(6, 7), "--order", order, "--json");
    double fromTheButt = JSON.readTree(alone.out()).get("stiffnessNPerMm").asDouble();
    assertTrue(together < 0.98 * fromTheButt, together + " against " + fromTheButt);
    assertTrue(u > 0 && u < 0.05 * together);
  }
}
