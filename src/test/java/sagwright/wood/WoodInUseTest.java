package sagwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.wood.DensityAtMoisture.Moistures;

class WoodInUseTest {
  private final SpeciesTable table = SpeciesTable.published();

  /** Reference formulas, 1.2: eq. 4-13, Gb 0.55 at 12 %: 0.6027 (printed 0.605). */
  @Test
  void givesTheHandbooksSpecificGravityAt12Percent() {
    assertEquals(0.602706701002685, DensityAtMoisture.gravityAt(0.55, 12), 1e-14);
    assertEquals(0.605, DensityAtMoisture.gravityAt(0.55, 12), 0.003);
  }

  /** Reference formulas, 1.2: eq. 4-14, Gx 0.60 at 12 % is 672 kg/m³ (printed 672). */
  @Test
  void givesTheHandbooksDensityAt12Percent() {
    double gb = 0.60 / (1 + 0.265 * 0.60 * (1 - 12.0 / 30));
    assertEquals(672, DensityAtMoisture.fromBasicGravity(gb, 12), 1e-9);
    assertEquals(672, DensityAtMoisture.convert(672, new Moistures(12, 12)), 1e-9);
  }

  /** At 30 % the wood has its green volume, so its density is that of the basic gravity. */
  @Test
  void keepsTheDryMassFromOneMoistureToAnother() {
    double at30 = DensityAtMoisture.convert(672, new Moistures(12, 30));
    double gb = 0.60 / (1 + 0.265 * 0.60 * (1 - 12.0 / 30));
    assertEquals(1000 * gb * 1.30, at30, 1e-9);
    double back = DensityAtMoisture.convert(at30, new Moistures(30, 12));
    assertEquals(672, back, 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"-0.1, 12", "30.1, 12", "12, -0.1", "12, 30.1", "NaN, 12", "12, NaN"})
  void givesNoDensityOutsideTheFormulasRange(double from, double to) {
    assertNull(DensityAtMoisture.convert(672, new Moistures(from, to)));
  }

  /** Wood Handbook, Table 5-16: at 50, 68 and 86 °F. */
  @ParameterizedTest
  @CsvSource({"10, 2.3153", "20, 0.3209", "30, -1.6735"})
  void saysWhatTemperatureDoesToTheModulus(double temperatureC, double percent) {
    assertEquals(percent, TemperatureEffect.modulusChangePercent(temperatureC), 1e-9);
  }

  @Test
  void woodGetsTwoPercentSofterForTenDegrees() {
    assertEquals(-1.994, TemperatureEffect.percentPer10C(), 5e-4); // 0.1108 % per °F, 18 °F
  }

  @Test
  void givesNoTemperatureEffectOutsideTheTable() {
    assertNull(TemperatureEffect.modulusChangePercent(-26.2));
    assertNotNull(TemperatureEffect.modulusChangePercent(-26.1));
    assertNotNull(TemperatureEffect.modulusChangePercent(65.5));
    assertNull(TemperatureEffect.modulusChangePercent(65.6));
    assertNull(TemperatureEffect.modulusChangePercent(Double.NaN));
  }

  @Test
  void takesAQuarterOfTheBendingStrengthAsSafe() {
    SafeStress ash = SafeStress.of(table, "european ASH", SafeStress.ASSUMED_SHARE);
    assertEquals(30, ash.stressMPa());
    assertFalse(ash.isGuess());
    assertEquals(20, SafeStress.of(table, "European ash", 1.0 / 6).stressMPa(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "snakewood, does not know snakewood",
    "ebony East Indian, no bending strength is published for ebony East Indian",
    ", no species is stated",
  })
  void takes15MPaForAnUnknownStrengthAndSaysSo(String species, String said) {
    SafeStress safe = SafeStress.of(table, species, 0.5);
    assertEquals(15, safe.stressMPa());
    assertTrue(safe.isGuess());
    assertTrue(safe.inWords().contains(said), safe.inWords());
    assertTrue(safe.inWords().contains("15 MPa"), safe.inWords());
  }

  @ParameterizedTest
  @CsvSource({"0", "-0.1", "1.01", "NaN"})
  void refusesAShareThatIsNone(double share) {
    assertThrows(IllegalArgumentException.class, () -> SafeStress.of(table, "European ash", share));
  }

  @Test
  void aDryWinterStiffensAndADampSummerSoftens() {
    MoistureAdjustment ash = MoistureAdjustment.of(table.find("European ash"));
    var year = YearInTheRoom.COMMON.of(ash, 12000.0);
    assertEquals(6.18821408414, year.dryWinterMoisturePercent(), 1e-9);
    assertEquals(12000 * Math.pow(1.212, (12 - 6.18821408414) / 13), year.dryWinterMPa(), 1e-6);
    assertTrue(year.dampSummerMoisturePercent() > 12);
    assertTrue(year.dampSummerMPa() < 12000);
  }

  @Test
  void saysNothingOfASeasonThatLiesOutsideTheFormula() {
    MoistureAdjustment ash = MoistureAdjustment.of(table.find("European ash"));
    var year = new YearInTheRoom(new RoomAir(22, 15), new RoomAir(25, 99)).of(ash, 12000.0);
    assertTrue(year.dryWinterMoisturePercent() < 6);
    assertNull(year.dryWinterMPa());
    assertTrue(year.dampSummerMoisturePercent() > 25);
    assertNull(year.dampSummerMPa());
    assertNull(YearInTheRoom.COMMON.of(ash, null).dampSummerMPa());
  }
}
