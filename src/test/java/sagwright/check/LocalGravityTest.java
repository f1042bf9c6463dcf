package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.check.LocalGravity.Place;

class LocalGravityTest {
  /** GRS 80 as adopted by the IAG in 1979: normal gravity at the equator and at the poles. */
  @ParameterizedTest
  @CsvSource({"0, 9.7803267715", "90, 9.8321863685", "-90, 9.8321863685"})
  void givesThePublishedNormalGravity(double latitude, double published) {
    assertEquals(published, at(latitude, 0), 1.5e-10);
  }

  /**
   * The series of the same system, γ = γe(1 + 0.0052790414·sin² + 0.0000232718·sin⁴ +
   * 0.0000001262·sin⁶ + 0.0000000007·sin⁸) (Moritz), good to 1e-9 m/s².
   */
  @Test
  void agreesWithTheSeriesOfTheSameSystem() {
    for (double latitude = -90; latitude <= 90; latitude += 7.5) {
      double s = Math.pow(Math.sin(Math.toRadians(latitude)), 2);
      double series =
          9.7803267715
              * (1
                  + s
                      * (0.0052790414
                          + s * (0.0000232718 + s * (0.0000001262 + s * 0.0000000007))));
      assertEquals(series, at(latitude, 0), 2e-9, "at " + latitude);
    }
  }

  @Test
  void fallsWithHeight() {
    assertEquals(3.086e-3, at(45, 0) - at(45, 1000), 1e-12);
  }

  /** 1000 g under standard gravity less the air that the weight displaces: 9.80665·0.99985. */
  @Test
  void makesALoadOfAMassInAir() {
    assertEquals(9.80665 * 0.99985, new LocalGravity(9.80665).loadN(1000), 1e-12);
    assertEquals(0, new LocalGravity(9.80665).loadN(0));
  }

  @ParameterizedTest
  @CsvSource({"9.69", "9.91", "0", "-9.81", "981", "NaN"})
  void refusesAGravityFoundNowhere(double gravity) {
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> new LocalGravity(gravity));
    assertTrue(refused.getMessage().startsWith("gravity "), refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"90.1, 0, latitude", "NaN, 0, latitude", "50, 9001, altitude", "50, NaN, altitude"})
  void refusesAPlaceOffTheEarth(double latitude, double altitude, String named) {
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> new Place(latitude, altitude));
    assertTrue(refused.getMessage().startsWith(named + " "), refused.getMessage());
  }

  private static double at(double latitude, double altitude) {
    return LocalGravity.at(new Place(latitude, altitude)).metresPerSecondSquared();
  }
}
