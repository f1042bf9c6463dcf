package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistureCommandTest {
  /** Wood Handbook, eq. 4-5, worked out to 30 digits. */
  @ParameterizedTest
  @CsvSource({"20, 65, 11.9962672197", "0, 50, 9.51940309552", "30, 85, 17.4833380866"})
  void printsTheEquilibriumMoisture(String temperature, String humidity, double expected)
      throws IOException {
    CommandRun run =
        CommandRun.of("moisture", "--temperature", temperature, "--humidity", humidity, "--json");
    assertEquals("", run.err());
    assertEquals(0, run.exitCode());
    assertEquals(
        expected,
        new ObjectMapper().readTree(run.out()).get("equilibriumMoisturePercent").asDouble(),
        1e-9 * expected);
  }

  @Test
  void saysItInWords() {
    CommandRun run = CommandRun.of("moisture", "--temperature", "20", "--humidity", "65");
    assertEquals("wood settles to 12.0 % moisture in this air", run.out().strip());
  }

  @ParameterizedTest
  @CsvSource({
    "-1.2, 50, temperature -1.2 °C lies outside",
    "50.1, 50, temperature 50.1 °C lies outside",
    "20, 100.5, humidity 100.5 % lies outside",
    "20, -1, humidity -1.0 % lies outside",
    "NaN, 50, temperature NaN",
    "warm, 50, 'warm' is not a double",
  })
  void airOutsideTheFormulaEndsWithOneLineAndExit2(
      String temperature, String humidity, String said) {
    CommandRun run =
        CommandRun.of(
            "moisture", "--temperature=" + temperature, "--humidity=" + humidity, "--json");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertEquals(1, run.errLines().length);
    assertTrue(run.err().contains(said), run.err());
  }

  @Test
  void coldIsGivenAsItIsSpoken() {
    CommandRun run =
        CommandRun.of("moisture", "--temperature", "-1.1", "--humidity", "100", "--json");
    assertEquals(0, run.exitCode(), run.err());
  }
}
