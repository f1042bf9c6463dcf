package sagwright.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bend tests made by others; each record names its source in its own file beside the sheet. */
class MeasuredRecordsTest {

  static List<String> strips() {
    return MeasuredRecord.STRIPS;
  }

  static List<String> pines() {
    return MeasuredRecord.PINES;
  }

  @ParameterizedTest
  @MethodSource("pines")
  void pineReadByHandMeetsTheLeastSquaresLineOverItsPairs(String name) throws PoorRunException {
    MeasuredRecord record = MeasuredRecord.of(name);
    StiffnessFit fit = StiffnessFinder.find(record.readings(), MeasuredRecord.STATED);
    assertEquals(record.expectedNPerMm(), fit.stiffnessNPerMm(), 0.005 * fit.stiffnessNPerMm());
    assertEquals(record.readings().loadN().length, fit.samplesUsed());
    assertNull(fit.hysteresisPercent());
  }

  @ParameterizedTest
  @MethodSource("strips")
  void stripBentToBreakingIsNearItsLowerPartOrSaysWhyNot(String name) throws PoorRunException {
    MeasuredRecord record = MeasuredRecord.of(name);
    StiffnessFit fit = StiffnessFinder.find(record.readings(), MeasuredRecord.STATED);
    double off = Math.abs(fit.stiffnessNPerMm() / record.expectedNPerMm() - 1);
    boolean saysWhy =
        fit.warnings().stream()
            .anyMatch(
                w -> w instanceof RunWarning.BranchBends || w instanceof RunWarning.SteeperBelow);
    assertTrue(off < 0.03 || saysWhy, name + " off by " + 100 * off + " %: " + fit.warnings());
    assertNull(fit.hysteresisPercent(), "a break is no unloading");
    assertTrue(fit.warnings().stream().anyMatch(w -> w instanceof RunWarning.Broke));
  }

  /** W. B. Gregory 1910, Table 4: the authors' modulus is that of the pair at the elastic limit. */
  @ParameterizedTest
  @ValueSource(strings = {"1a", "1b", "2a", "3a", "5a", "5b"})
  void authorsModulusFollowsFromTheAuthorsPair(String beam) {
    JsonNode story = MeasuredRecord.of("pine_stringer_1909_" + beam).story();
    JsonNode geometry = story.get("geometry");
    JsonNode authors = story.get("authorsResult");
    double stiffness =
        authors.get("elasticLimitLoadN").asDouble()
            / authors.get("elasticLimitDeflectionMm").asDouble();
    assertEquals(
        authors.get("E_MPa").asDouble(),
        modulusMPa(stiffness, geometry),
        0.003 * authors.get("E_MPa").asDouble());
  }

  /** The laminate strip's authors took the line through the first 28 rows, toe and bend and all. */
  @ParameterizedTest
  @ValueSource(strings = "laminate_strip_4c")
  void authorsModulusFollowsFromTheAuthorsRows(String name) {
    MeasuredRecord record = MeasuredRecord.of(name);
    double[] load = record.readings().loadN();
    YorkLine line =
        YorkLine.ofEqualErrors(
            LineSums.over(
                Arrays.copyOf(record.readings().deflectionMm(), 28), Arrays.copyOf(load, 28)),
            0,
            0);
    // their E, read; geometry as published
    assertEquals(1666.5, modulusMPa(line.slope(), record.story().get("geometry")), 0.003 * 1666.5);
  }

  /** E = k·L³/(48·I) of a rectangle: bending alone, as the authors had it. */
  private static double modulusMPa(double stiffnessNPerMm, JsonNode geometry) {
    double span = geometry.get("spanMm").asDouble();
    double height = geometry.get("heightMm").asDouble();
    double second = geometry.get("widthMm").asDouble() * height * height * height / 12;
    return stiffnessNPerMm * span * span * span / (48 * second);
  }
}
