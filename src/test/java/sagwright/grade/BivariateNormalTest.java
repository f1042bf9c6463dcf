package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sagwright.grade.BivariateNormal.Limits;

class BivariateNormalTest {
  private static final double FAR = 9;

  /** Sheppard's: both above 0 with a chance of ¼ + asin ρ / 2π. */
  @Test
  void bothLieAboveTheMiddleAsSheppardFound() {
    Limits above = new Limits(0, FAR);
    for (double rho : new double[] {-1, -0.99, -0.93, -0.5, 0, 0.3, 0.92, 0.93, 0.999, 1}) {
      assertEquals(
          0.25 + Math.asin(rho) / (2 * Math.PI),
          BivariateNormal.within(above, above, rho),
          1e-15,
          "correlation " + rho);
    }
  }

  @Test
  void ofOneAndTheSameVariableTheLimitsOverlap() {
    Limits left = new Limits(-1.5, 0.5);
    Limits right = new Limits(-0.25, 2);
    assertEquals(Chance.standardBetween(-0.25, 0.5), BivariateNormal.within(left, right, 1), 1e-15);
    assertEquals(
        Chance.standardBetween(-0.5, 0.25),
        BivariateNormal.within(new Limits(-0.5, 9), new Limits(-0.25, 9), -1),
        1e-15);
    assertEquals(0, BivariateNormal.within(new Limits(1, 2), new Limits(3, 4), 1), 1e-15);
  }

  @Test
  void aLimitMayBeAnywhere() {
    double infinite = Double.POSITIVE_INFINITY;
    for (double rho : new double[] {-0.99, 0.2, 0.99}) {
      assertEquals(
          1,
          BivariateNormal.within(new Limits(-infinite, infinite), new Limits(-1e200, 1e200), rho),
          1e-15);
      assertEquals(
          NormalTail.above(1),
          BivariateNormal.within(new Limits(1, infinite), new Limits(-infinite, infinite), rho),
          1e-15);
      assertEquals(
          0, BivariateNormal.within(new Limits(1e5, infinite), new Limits(-1, 1), rho), 1e-15);
    }
  }

  @Test
  void agreesWithIntegrationForAnyCorrelationAndLimits() {
    Random random = new Random(11);
    for (int i = 0; i < 3000; i++) {
      double rho = correlation(random);
      double[] first = limits(random);
      double[] second = limits(random);
      double[][] rows = {{1, 0}, {rho, Math.sqrt((1 - rho) * (1 + rho))}};
      assertEquals(
          JointChance.ofMany(rows, List.of(first, second)),
          BivariateNormal.within(
              new Limits(first[0], first[1]), new Limits(second[0], second[1]), rho),
          2e-10,
          "correlation " + rho + ", case " + i);
    }
  }

  /** Mostly near ±1, as the stiffnesses of one shaft are. */
  private static double correlation(Random random) {
    double short0 = Math.pow(10, -6 * random.nextDouble());
    return (random.nextInt(4) == 0 ? -1 : 1) * (1 - short0);
  }

  private static double[] limits(Random random) {
    double low = 3 * random.nextGaussian();
    return new double[] {low, low + 5 * random.nextDouble()};
  }
}
