package sagwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoistureAdjustmentTest {
  private static final MoistureAdjustment WHITE_ASH = new MoistureAdjustment(12000.0 / 9900, 24);

  /** Wood Handbook, p. 5-34: modulus of rupture of white ash at 8 %, printed 119 500 kPa. */
  @Test
  void givesTheHandbooksWorkedExample() {
    MoistureAdjustment rupture = new MoistureAdjustment(103_000.0 / 66_000, 24);
    double at8 = rupture.modulusAt(8, 103_000.0);
    assertEquals(119_500, at8, 50);
    assertEquals(119472.601662988, at8, 1e-9);
  }

  /** Reference formulas, 1.1: white ash and sugar maple by eq. 5-3, worked out to 30 digits. */
  @ParameterizedTest
  @CsvSource({
    "12000, 9900, 24, 8, 12794.6947711372",
    "12000, 9900, 24, 9, 12591.2184548675",
    "12000, 9900, 24, 11.2, 12154.8885982712",
    "12000, 9900, 24, 15, 11436.5421040195",
    "12000, 9900, 24, 24, 9900",
    "12600, 10700, 25, 8, 13249.9008188068",
    "12600, 10700, 25, 10, 12920.8649213962",
  })
  void givesTheModulusAtAnotherMoisture(
      double at12, double green, double mp, double moisture, double expected) {
    MoistureAdjustment adjustment = new MoistureAdjustment(at12 / green, mp);
    assertEquals(expected, adjustment.modulusAt(moisture, at12), 1e-9);
  }

  /** Reference formulas, 1.1, "back to 12 %". */
  @ParameterizedTest
  @CsvSource({
    "11.2, 12182.7525446067",
    "8, 11573.5468996138",
    "15, 12947.9696444221",
    "12, 12340",
  })
  void bringsAMeasuredModulusTo12Percent(double moisture, double expected) {
    assertEquals(expected, WHITE_ASH.modulusAt12(12340, moisture), 1e-9);
  }

  /** docs/contract.md, section 4: 12340 MPa at 11.2 % in European ash is 12194.9 at 12 %. */
  @Test
  void takesTheSpeciesOwnValues() {
    MoistureAdjustment ash = MoistureAdjustment.of(SpeciesTable.published().find("european ash"));
    assertEquals(12194.9, ash.modulusAt12(12340, 11.2), 0.05);
  }

  @Test
  void takesTheContractsValuesForAnUnknownSpecies() {
    MoistureAdjustment unknown = MoistureAdjustment.of(Optional.empty());
    assertEquals(1.2, unknown.ratio12ToGreen());
    assertEquals(25, unknown.intersectionMoisturePercent());
    assertEquals(10000 / Math.pow(1.2, 2.0 / 13), unknown.modulusAt12(10000, 10.0), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {5.999, 24.001, 0, -1, 60, Double.NaN})
  void givesNoNumberOutsideTheFormulasRange(double moisture) {
    assertNull(WHITE_ASH.modulusAt12(12340, moisture));
    assertNull(WHITE_ASH.modulusAt(moisture, 12340.0));
  }

  @Test
  void givesNoNumberWithoutAMoisture() {
    assertNull(WHITE_ASH.modulusAt12(12340, null));
    assertNull(WHITE_ASH.modulusAt(10, null));
  }

  @ParameterizedTest
  @ValueSource(doubles = {6, 24})
  void givesANumberAtBothEndsOfItsRange(double moisture) {
    assertNotNull(WHITE_ASH.modulusAt12(12340, moisture));
  }

  /** There and back again is where one started. */
  @ParameterizedTest
  @ValueSource(doubles = {6, 7.3, 12, 18.8, 24})
  void comesBackToWhereItStarted(double moisture) {
    Double at12 = WHITE_ASH.modulusAt12(11111, moisture);
    assertEquals(11111, WHITE_ASH.modulusAt(moisture, at12), 1e-9);
  }
}
