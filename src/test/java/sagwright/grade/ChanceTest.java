package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import sagwright.uncertainty.Estimate;

class ChanceTest {
  /** reference/data/gauss-cdf.csv, 30 digits. */
  @Test
  void theNormalDistributionAgreesInTheMiddleAndInTheTails() throws IOException {
    int checked = 0;
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                ChanceTest.class.getResourceAsStream("/reference/data/gauss-cdf.csv"),
                StandardCharsets.UTF_8))) {
      for (String line : reader.lines().toList()) {
        if (!line.startsWith("#") && !line.startsWith("z")) {
          String[] row = line.split(",");
          double expected = Double.parseDouble(row[1]);
          double got = Chance.below(Double.parseDouble(row[0]), new Estimate(0, 1));
          assertEquals(expected, got, 1e-13 * expected, line);
          checked++;
        }
      }
    }
    assertEquals(23, checked);
  }

  /** JCGM 106:2012, 7: breakdown voltage of a Zener diode, not above −5.40 V. */
  @Test
  void jcgm106ZenerDiode() {
    assertEquals(0.919243340766229, Chance.below(-5.40, new Estimate(-5.47, 0.05)), 1e-12);
  }

  /** JCGM 106:2012, 7: breaking strength of a container, at least 490. */
  @Test
  void jcgm106Container() {
    assertEquals(0.989009547384822, Chance.above(490, new Estimate(509.7, 8.6)), 1e-14);
  }

  /** JCGM 106:2012, 7: kinematic viscosity of an oil, 12.5 to 16.3. */
  @Test
  void jcgm106Oil() {
    assertEquals(0.662629786495308, Chance.between(12.5, 16.3, new Estimate(13.6, 1.8)), 1e-13);
  }

  /** reference/formulas.md, 7: stiffness 2.08, u 0.03, ask 2.10 ± 5 %. */
  @Test
  void aStiffnessWithinBelowAndAboveItsTolerance() {
    Estimate stiffness = new Estimate(2.08, 0.03);
    assertEquals(0.997681279571422, Chance.between(1.995, 2.205, stiffness), 1e-13);
    assertEquals(0.00230326613169589, Chance.below(1.995, stiffness), 1e-14);
    assertEquals(1.5454296882296e-5, Chance.above(2.205, stiffness), 1e-15);
  }

  @Test
  void smallChancesFarOutKeepTheirDigits() {
    // Φ(−8) from gauss-cdf.csv; Φ(−9) adds less than a thousandth of it.
    double upper = Chance.between(8, 9, new Estimate(0, 1));
    assertEquals(upper, Chance.between(-9, -8, new Estimate(0, 1)), 1e-28);
    assertEquals(6.220960574271784e-16 * (1 - 1.814e-4), upper, 1e-20);
  }

  @Test
  void aLimitHoweverFarOutIsCertain() {
    Estimate figure = new Estimate(2.25, 0.03);
    assertEquals(1, Chance.between(-2e10, 2e10, figure));
    assertEquals(0, Chance.between(1e10, 2e10, figure));
    assertEquals(1, Chance.below(1e10, figure));
    assertEquals(0, Chance.above(1e10, figure));
  }

  @Test
  void whatIsCertainLiesWithinOrDoesNot() {
    Estimate certain = new Estimate(2, 0);
    assertEquals(1, Chance.between(2, 2, certain));
    assertEquals(0, Chance.between(2.1, 3, certain));
    assertEquals(1, Chance.below(2.1, certain));
    assertEquals(0, Chance.below(2, certain));
    assertEquals(0, Chance.above(2, certain));
  }
}
