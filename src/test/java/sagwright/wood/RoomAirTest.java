package sagwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomAirTest {
  /** Reference formulas, 1.4: Wood Handbook eq. 4-5, form in °C, worked out to 30 digits. */
  @ParameterizedTest
  @CsvSource({
    "20, 65, 11.9962672197",
    "20, 50, 9.27114070988",
    "20, 30, 6.18821408414",
    "20, 80, 16.0371273384",
    "0, 50, 9.51940309552",
    "30, 85, 17.4833380866",
    "21.1, 65, 11.9584810955",
  })
  void givesTheHandbooksEquation(double temperatureC, double humidityPercent, double expected) {
    assertEquals(
        expected,
        new RoomAir(temperatureC, humidityPercent).equilibriumMoisturePercent(),
        1e-9 * expected);
  }

  /** Wood Handbook, Table 4-2, −1.1…48.9 °C and 5…95 %: all 190 cells to 0.06. */
  @Test
  void agreesWithTheHandbooksTable() throws IOException {
    int cells = 0;
    int equalWhenRounded = 0;
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setCommentMarker('#').get();
    try (InputStream in = RoomAirTest.class.getResourceAsStream("/reference/emc-table.csv");
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      for (CSVRecord row :
          format.builder().setSkipHeaderRecord(true).get().parse(reader).getRecords()) {
        double temperatureC = Double.parseDouble(row.get("temp_C"));
        double humidity = Double.parseDouble(row.get("rh_percent"));
        double printed = Double.parseDouble(row.get("emc_table_percent"));
        double ours = new RoomAir(temperatureC, humidity).equilibriumMoisturePercent();
        assertEquals(printed, ours, 0.06, row.toString());
        assertEquals(Double.parseDouble(row.get("emc_eq45_C")), ours, 1e-6, row.toString());
        equalWhenRounded += Math.round(ours * 10) == Math.round(printed * 10) ? 1 : 0;
        cells++;
      }
    }
    assertEquals(190, cells);
    assertEquals(184, equalWhenRounded);
  }

  @Test
  void answersAtTheEndsOfItsRange() {
    assertEquals(0, new RoomAir(20, 0).equilibriumMoisturePercent());
    double saturated = new RoomAir(20, 100).equilibriumMoisturePercent();
    assertTrue(saturated > 24 && saturated < 32, "at 100 %: " + saturated);
    assertTrue(new RoomAir(-1.1, 50).equilibriumMoisturePercent() > 9);
    assertTrue(new RoomAir(50, 50).equilibriumMoisturePercent() > 7);
  }

  @ParameterizedTest
  @CsvSource({
    "-1.11, 50, temperature",
    "50.01, 50, temperature",
    "NaN, 50, temperature",
    "20, -0.1, humidity",
    "20, 100.1, humidity",
    "20, NaN, humidity",
    "Infinity, 50, temperature",
  })
  void refusesAirOutsideTheFormulasRangeAndSaysWhich(double c, double percent, String named) {
    Exception refused = assertThrows(IllegalArgumentException.class, () -> new RoomAir(c, percent));
    assertTrue(refused.getMessage().startsWith(named + " "), refused.getMessage());
  }

  @Test
  void dampAirMakesDampWoodAtEveryTemperature() {
    for (double c = -1; c <= 50; c += 3) {
      double before = -1;
      for (double humidity = 0; humidity <= 100; humidity += 2.5) {
        double moisture = new RoomAir(c, humidity).equilibriumMoisturePercent();
        assertTrue(moisture > before, c + " °C, " + humidity + " %");
        before = moisture;
      }
    }
  }
}
