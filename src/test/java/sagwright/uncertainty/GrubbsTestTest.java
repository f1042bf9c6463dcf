package sagwright.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrubbsTestTest {
  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1 (Tietjen and Moore's uranium
   * isotope): G 2.4687, one-sided limit at 5 % 2.032.
   */
  @Test
  void theHandbooksExample() {
    double[] uranium = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    GrubbsTest test = GrubbsTest.of(uranium, 0.05);
    assertEquals(7, test.index());
    assertEquals(2.4687, test.statistic(), 5e-5 + 2e-5);
    assertEquals(2.032, GrubbsTest.limit(8, 0.05 / 8), 5e-4);
    assertTrue(test.standsOut());
  }

  /** Two-sided limits at 5 %: one-sided at 2.5 % of Grubbs and Beck 1972 (from memory). */
  @ParameterizedTest
  @CsvSource({"3, 1.155", "5, 1.715", "10, 2.290", "20, 2.709"})
  void limitsOfTheTable(int n, double limit) {
    assertEquals(limit, GrubbsTest.limit(n, 0.05 / (2 * n)), 1e-3);
  }

  @Test
  void oneNormalSampleInTwentyIsCalledSo() {
    Random random = new Random(3);
    int called = 0;
    for (int i = 0; i < 4000; i++) {
      double[] sample = random.ints(7).mapToDouble(x -> random.nextGaussian()).toArray();
      called += GrubbsTest.of(sample, 0.05).standsOut() ? 1 : 0;
    }
    assertEquals(0.05, called / 4000.0, 0.012);
    assertFalse(called == 0);
  }
}
