package sagwright.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * JCGM 101:2008, the examples of clause 9 and of 7.9.2, through the program's own adaptive Monte
 * Carlo. Printed results: src/test/resources/reference, formulas.md, section 6.
 */
class Jcgm101ExamplesTest {
  private static final double ROOT_3 = Math.sqrt(3);

  private static AdaptiveMonteCarlo run(
      ToDoubleFunction<SplittableRandom> draw, int digits, double share, int mostBatches) {
    return AdaptiveMonteCarlo.run(
        batch -> {
          SplittableRandom random = new SplittableRandom(20080101L + batch);
          double[] values = new double[AdaptiveMonteCarlo.BATCH];
          Arrays.setAll(values, i -> draw.applyAsDouble(random));
          return values;
        },
        digits,
        share,
        mostBatches);
  }

  private static double gaussian(SplittableRandom random) {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private static double rectangular(SplittableRandom random) {
    return ROOT_3 * (2 * random.nextDouble() - 1);
  }

  private static double sumOfFour(
      SplittableRandom random, ToDoubleFunction<SplittableRandom> each, double last) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      sum += each.applyAsDouble(random);
    }
    return sum + last * each.applyAsDouble(random);
  }

  /** 7.9.2: 35e-5 to two digits gives ½·10⁻⁵, 4e-4 to one digit ½·10⁻⁴, 2 to one digit ½. */
  @ParameterizedTest
  @CsvSource({
    "0.00035, 2, 0.000005",
    "0.00035, 1, 0.00005",
    "2, 1, 0.5",
    "2, 2, 0.05",
    "54.93, 1, 5",
    "54.93, 2, 0.5",
    "99.6, 2, 5",
    "0.0996, 2, 0.005"
  })
  void numericalTolerance(double uncertainty, int digits, double tolerance) {
    assertEquals(tolerance, NumericalTolerance.of(uncertainty, digits), 1e-12 * tolerance);
  }

  /** 9.2.2: four standard normals, u 2.00 and ± 3.92; the budget agrees. */
  @Test
  void sumOfFourNormals() {
    AdaptiveMonteCarlo sum = run(r -> sumOfFour(r, Jcgm101ExamplesTest::gaussian, 1), 2, 0.1, 500);
    assertTrue(sum.settled());
    assertEquals(2.00, sum.standardUncertainty(), 0.01);
    assertEquals(-3.91992796908, sum.interval95().low(), 0.01);
    assertEquals(3.91992796908, sum.interval95().high(), 0.01);
    assertTrue(BudgetCheck.of(new Estimate(0, 2), sum.interval95()).agrees());
  }

  /** 9.2.3: four rectangulars of unit variance, ± 3.88 where the budget says ± 3.92. */
  @Test
  void sumOfFourRectangulars() {
    AdaptiveMonteCarlo sum =
        run(r -> sumOfFour(r, Jcgm101ExamplesTest::rectangular, 1), 2, 0.1, 500);
    assertEquals(3.87940674134782, sum.interval95().high(), 0.01);
    assertEquals(-3.87940674134782, sum.interval95().low(), 0.01);
  }

  /** 9.2.4: one of the rectangulars ten times as wide, u 10.1 and ± 17.0; ± 19.9 by the budget. */
  @Test
  void sumOfFourWithOneThatRules() {
    AdaptiveMonteCarlo sum =
        run(r -> sumOfFour(r, Jcgm101ExamplesTest::rectangular, 10), 2, 0.2, 500);
    assertTrue(sum.settled());
    assertEquals(10.149, sum.standardUncertainty(), 0.03);
    assertEquals(17.0158140998568, sum.interval95().high(), 0.1);
    BudgetCheck check = BudgetCheck.of(new Estimate(0, Math.sqrt(103)), sum.interval95());
    assertEquals(19.9 - 17.0, check.highDifference(), 0.15);
    assertEquals(5, check.tolerance(), 1e-12);
    assertFalse(
        BudgetCheck.of(new Estimate(0, 0.9), new Interval(-1.4, 1.4)).agrees(),
        "as far off, with one digit of a smaller power of ten");
  }

  /**
   * 9.3, mass calibration: mean 1.2341 mg, u 0.0754 (0.0755 exactly), shortest 95 % interval
   * [1.0834, 1.3825]; first order 0.0539, which the draws do not bear out.
   */
  @Test
  void massCalibration() {
    AdaptiveMonteCarlo mass = run(Jcgm101ExamplesTest::massMg, 2, 0.4, 1000);
    assertTrue(mass.settled());
    assertEquals(1.2341, mass.mean(), 0.0005);
    assertEquals(0.0754797399554, mass.standardUncertainty(), 0.0003);
    Interval all = mass.interval95();
    // Printed is the shortest interval. The distribution is symmetric, so that this is as wide as
    // the even-tailed one; where exactly the shortest lies is left to the luck of the draws.
    assertEquals(1.3825 - 1.0834, all.high() - all.low(), 0.0006);
    assertEquals(1.0834, all.low(), 0.0015);
    assertEquals(1.3825, all.high(), 0.0015);
    BudgetCheck check = BudgetCheck.of(new Estimate(1.2340, 0.0538516480713), all);
    assertTrue(check.lowDifference() > 0.04 && check.highDifference() > 0.04);
    assertEquals(0.005, check.tolerance(), 1e-15);
    assertFalse(check.agrees());
  }

  private static double massMg(SplittableRandom random) {
    double reference = 100_000 + 0.050 * gaussian(random);
    double added = 1.234 + 0.020 * gaussian(random);
    double air = 1.20 + 0.10 * (2 * random.nextDouble() - 1);
    double weight = 8000 + 1000 * (2 * random.nextDouble() - 1);
    double ofReference = 8000 + 50 * (2 * random.nextDouble() - 1);
    return (reference + added) * (1 + (air - 1.2) * (1 / weight - 1 / ofReference)) - 100_000;
  }

  @Test
  void drawsThatNeverSettleEndAndSaySo() {
    AdaptiveMonteCarlo wild = run(r -> Math.tan(Math.PI * (r.nextDouble() - 0.5)), 2, 0.2, 20);
    assertFalse(wild.settled());
    assertEquals(200_000, wild.draws());
  }
}
