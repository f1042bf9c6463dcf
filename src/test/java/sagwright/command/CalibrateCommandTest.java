package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CalibrateCommandTest {
  private static final String LOAD = "calibration/load-points-example.csv";
  private static final String GAUGE = "calibration/gauge-points-example.csv";
  private static final String BAR = "calibration/frame-bar-example.json";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  /** Figures worked out apart, in Python with NumPy, by docs/calibration-terms.md. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void loadPrintsTheLineAndTheTermsWithOrWithoutJson(boolean json) throws IOException {
    CommandRun run =
        json
            ? CommandRun.of("calibrate", "load", "--points", LOAD, "--gravity", "9.812", "--json")
            : CommandRun.of("calibrate", "load", "--points", LOAD, "--gravity", "9.812");
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    assertEquals(1, run.outLines().length);
    JsonNode answer = JSON.readTree(run.out());
    assertEquals(2.4978627737216487e-05, answer.get("slope").asDouble(), 1e-16);
    assertEquals(2.134045072932182e-09, answer.get("slopeStdUncertainty").asDouble(), 1e-17);
    assertEquals(0.00840253586621071, answer.get("residualStd").asDouble(), 1e-12);
    assertEquals(39, answer.get("residuals").size());
    assertEquals(0.23520532316164577, answer.get("greatestError").asDouble(), 1e-9);
    assertEquals(0.35645459774635796, answer.get("repeatability").asDouble(), 1e-9);
    assertEquals(0.09259332527173271, answer.get("reversibility").asDouble(), 1e-9);
    assertEquals(0.0127814434334774, answer.get("zeroReturn").asDouble(), 1e-9);
    assertEquals(0.5, answer.get("class").asDouble());
  }

  /** Latitude 45° at 100 m: 9.806199203 less 3.086e-4; the factor goes with g. */
  @Test
  void latitudeAndAltitudeStandForGravity() throws IOException {
    double byPlace =
        answer("calibrate", "load", "--points", LOAD, "--latitude", "45", "--altitude", "100")
            .get("slope")
            .asDouble();
    double byGravity =
        answer("calibrate", "load", "--points", LOAD, "--gravity", "9.805890603")
            .get("slope")
            .asDouble();
    assertEquals(byGravity, byPlace, 1e-9 * byGravity);
  }

  @Test
  void oneRoundTellsNoRepeatability() throws IOException {
    Path points = file("one.csv", "massG,counts,direction\n0,0,up\n1000,10,up\n2000,21,up\n");
    JsonNode answer =
        answer("calibrate", "load", "--points", points.toString(), "--gravity", "9.81");
    assertTrue(answer.get("repeatability").isNull());
    assertTrue(answer.get("reversibility").isNull());
    assertTrue(answer.get("zeroReturn").isNull());
    assertTrue(answer.get("class").isNull(), "an error of several percent keeps no class");
  }

  @Test
  void threePartsMakeACalibrationThatRecordsARun() throws Exception {
    Path into = folder.resolve("calibration.json");
    JsonNode load =
        answer(
            "calibrate", "load", "--points", LOAD, "--gravity", "9.812", "--into", into.toString());
    JsonNode gauge =
        answer("calibrate", "gauge", "--points", GAUGE, "--into", into.toString(), "--json");
    JsonNode frame = bar("3000", "--into", into.toString());
    JsonNode made = JSON.readTree(into.toFile());
    assertEquals("sagwright-calibration/1", made.get("format").asText());
    assertTrue(Instant.parse(made.get("made").asText()).isBefore(Instant.now().plusSeconds(1)));
    assertEquals(load.get("slope"), made.at("/load/newtonPerCount"));
    assertEquals(load.get("residualStd"), made.at("/load/uncertaintyN"));
    assertEquals(
        100 * load.get("slopeStdUncertainty").asDouble() / load.get("slope").asDouble(),
        made.at("/load/scaleUncertaintyPercent").asDouble(),
        1e-15);
    assertEquals(5 * 9.812 * 0.99985, made.at("/load/greatestN").asDouble(), 1e-12);
    assertEquals(gauge.get("slope"), made.at("/gauge/mmPerStep"));
    assertEquals(25, made.at("/gauge/greatestMm").asDouble());
    assertEquals(frame.get("frameComplianceMmPerN"), made.get("frameComplianceMmPerN"));
    assertEquals(
        frame.get("frameComplianceStdUncertaintyMmPerN"),
        made.get("frameComplianceUncertaintyMmPerN"));
    assertEquals(List.of("calibration.json"), names());
  }

  /** The example's run was drawn with a frame of 0.0021 mm/N. */
  @Test
  void frameFindsWhatTheExampleWasMadeWith() throws IOException {
    JsonNode frame = bar("1000", "--json");
    double u = frame.get("frameComplianceStdUncertaintyMmPerN").asDouble();
    assertEquals(0.0021, frame.get("frameComplianceMmPerN").asDouble(), 2 * u);
    assertTrue(u < 0.00005, "u = " + u);
  }

  @Test
  void theRestOfTheFileStays() throws Exception {
    String before =
        """
        { "format": "sagwright-calibration/1", "made": "2026-03-02T09:00:00Z", "validDays": 90,
          "by": "KM", "x-room": {"C": 21},
          "gauge": { "mmPerStep": 0.001, "scaleUncertaintyPercent": 0.05, "uncertaintyMm": 0.005,
                     "greatestMm": 25, "springNPerMm": 0.03 },
          "frameComplianceMmPerN": 0.002, "frameComplianceUncertaintyMmPerN": 0 }
        """;
    Path into = file("calibration.json", before);
    answer("calibrate", "load", "--points", LOAD, "--gravity", "9.812", "--into", into.toString());
    JsonNode was = JSON.readTree(before);
    JsonNode now = JSON.readTree(into.toFile());
    for (String key : List.of("made", "validDays", "by", "x-room", "gauge")) {
      assertEquals(was.get(key), now.get(key), key);
    }
    assertTrue(now.has("load"));
    answer("calibrate", "gauge", "--points", GAUGE, "--into", into.toString());
    assertEquals(0.03, JSON.readTree(into.toFile()).at("/gauge/springNPerMm").asDouble());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "massG,counts,direction;0,0,up;10,x,up|2|line 3: counts is \"x\", must be a number",
        "mass,counts,direction;0,0,up|2|line 1: the header must be massG,counts,direction",
        "massG,counts,direction;0,0,side|2|line 2: direction is \"side\", must be up or down",
        "massG,counts,direction;0,0,up;10,5,up|3|a line wants 3 points or more, here are 2",
        "massG,counts,direction;0,7,up;10,7,up;20,7,up|3|all readings are alike",
        "massG,counts,direction|3|a line wants 3 points or more, here are 0",
        "``|2|line 1: the header massG,counts,direction is missing",
      })
  void aBadPointsFileIsNamedInOneLineAndNothingIsWritten(String csv, int exit, String said)
      throws IOException {
    Path points = file("bad.csv", csv.replace(';', '\n'));
    Path into = folder.resolve("calibration.json");
    CommandRun run =
        CommandRun.of(
            "calibrate",
            "load",
            "--points",
            points.toString(),
            "--gravity",
            "9.81",
            "--into",
            into.toString());
    assertEquals(exit, run.exitCode());
    assertEquals("", run.out());
    assertEquals(1, run.errLines().length);
    assertTrue(run.err().startsWith(points + ": " + said), run.err());
    assertFalse(Files.exists(into));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "load --points " + LOAD + "|one of --gravity and --latitude is needed",
        "load --points " + LOAD + " --gravity 9.81 --latitude 50|one of --gravity and --latitude",
        "load --points " + LOAD + " --gravity 9.81 --altitude 50|--altitude goes with --latitude",
        "load --points " + LOAD + " --gravity 98.1|gravity 98.1 m/s² lies outside 9.7 to 9.9",
        "load --points " + LOAD + " --gravity NaN|gravity NaN m/s² lies outside",
        "load --points " + LOAD + " --latitude 91|latitude 91.0° lies outside -90 to 90",
        "load --points " + LOAD + " --gravity much|'much' is not a double",
        "load --points none.csv --gravity 9.81|none.csv: there is no such file",
        "load --points calibration --gravity 9.81|calibration: is a folder, not a document",
        "load --gravity 9.81|Missing required option: '--points=FILE.csv'",
        "gauge --points " + LOAD + "|the header must be lengthMm,steps,direction",
        "frame --sheet " + BAR + "|Missing required option: '--modulus=MPA'",
        "frame --sheet " + BAR + " --modulus 0|--modulus is 0.0, must be above 0",
        "frame --sheet " + BAR + " --modulus 2e5 --modulus-uncertainty -1|must not be below 0",
        "frame --sheet none.json --modulus 206000|none.json: there is no such file",
        "frame --sheet " + LOAD + " --modulus 206000|load-points-example.csv: is not JSON",
        "tare|Unmatched argument",
        "|Missing required subcommand",
      })
  void aBadCallEndsWithOneLineAndExit2(String given, String said) {
    String args = given == null ? "calibrate" : "calibrate " + given;
    CommandRun run = CommandRun.of(args.split(" "));
    assertEquals(2, run.exitCode(), run.err());
    assertEquals("", run.out());
    assertEquals(1, run.errLines().length, run.err());
    assertTrue(run.err().contains(said), run.err());
  }

  @Test
  void aFileThatIsNoCalibrationIsLeftAsItIs() throws IOException {
    Path into = file("mine.json", "{\"format\": \"sagwright-order/1\"}");
    CommandRun run =
        CommandRun.of("calibrate", "gauge", "--points", GAUGE, "--into", into.toString());
    assertEquals(2, run.exitCode());
    assertTrue(run.err().startsWith(into + ": format: "), run.err());
    assertEquals("", run.out());
    assertEquals("{\"format\": \"sagwright-order/1\"}", Files.readString(into));
  }

  @Test
  void aPlaceThatCannotBeWrittenIsNamed() {
    Path into = folder.resolve("no/such/folder/calibration.json");
    CommandRun run =
        CommandRun.of("calibrate", "gauge", "--points", GAUGE, "--into", into.toString());
    assertEquals(2, run.exitCode());
    assertEquals(into + ": cannot be written", run.err().strip());
  }

  @Test
  void aComplianceBelowZeroIsPrintedAndNotWritten() throws IOException {
    JsonNode soft = answer("calibrate", "frame", "--sheet", BAR, "--modulus", "100000");
    assertTrue(soft.get("frameComplianceMmPerN").asDouble() < 0);
    Path into = folder.resolve("calibration.json");
    CommandRun run =
        CommandRun.of(
            "calibrate", "frame", "--sheet", BAR, "--modulus", "100000", "--into", into.toString());
    assertEquals(3, run.exitCode());
    assertEquals(1, run.errLines().length);
    assertFalse(Files.exists(into));
  }

  @Test
  void aTableForPeopleSaysTheClassInWords() {
    CommandRun load =
        CommandRun.of("calibrate", "load", "--points", LOAD, "--gravity", "9.812", "--table");
    assertTrue(load.out().contains("0.0249786 ± 0.0000042 mN per count"), load.out());
    assertTrue(load.out().contains("class 0.5 of ISO 7500-1"), load.out());
    CommandRun frame =
        CommandRun.of("calibrate", "frame", "--sheet", BAR, "--modulus", "206000", "--table");
    assertTrue(frame.out().contains("µm per N"), frame.out());
  }

  /** The example bar as steel, its modulus uncertain by so many MPa. */
  private JsonNode bar(String modulusUncertaintyMPa, String... more) throws IOException {
    List<String> args = new ArrayList<>(List.of("calibrate", "frame", "--sheet", BAR));
    args.addAll(List.of("--modulus", "206000", "--modulus-uncertainty", modulusUncertaintyMPa));
    args.addAll(List.of(more));
    return answer(args.toArray(String[]::new));
  }

  private JsonNode answer(String... args) throws IOException {
    CommandRun run = CommandRun.of(args);
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    return JSON.readTree(run.out());
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
