package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

class NormalTailTest {
  private static final MathContext DIGITS = new MathContext(60, RoundingMode.HALF_EVEN);

  @Test
  void agreesWithTheSeriesInSixtyDigitsInTheMiddle() {
    for (int i = -320; i <= 320; i++) {
      double z = i / 64.0;
      double exact = BigDecimal.valueOf(0.5).subtract(seriesFromMiddle(z)).doubleValue();
      assertEquals(1, NormalTail.above(z) / exact, 2e-15, "z = " + z);
    }
  }

  @Test
  void agreesWithTheContinuedFractionInSixtyDigitsFarOut() {
    for (int i = 320; i <= 37 * 64; i += 7) {
      double z = i / 64.0;
      assertEquals(1, NormalTail.above(z) / farOut(z), 3e-15, "z = " + z);
    }
  }

  @Test
  void agreesWithCommonsMathEverywhere() {
    for (double z = -40; z <= 40; z += 0.0137) {
      double want = Erf.erfc(z / Math.sqrt(2)) / 2;
      assertEquals(want, NormalTail.above(z), 3e-13 * want + 1e-290, "z = " + z);
    }
  }

  @Test
  void fallsWithoutAStepWhereOneApproximationFollowsTheOther() {
    for (double join : new double[] {0.46875 * Math.sqrt(2), 4 * Math.sqrt(2)}) {
      double before = NormalTail.above(Math.nextDown(join));
      double after = NormalTail.above(Math.nextUp(join));
      assertEquals(1, before / after, 1.2e-14);
    }
    assertEquals(0, NormalTail.above(60));
    assertEquals(1, NormalTail.above(-60));
    assertTrue(NormalTail.above(37) > 0);
  }

  /** Φ(z) − ½ = φ(0)·Σ (−1)^n z^(2n+1)/(2^n n! (2n+1)), Abramowitz and Stegun 26.2.10. */
  private static BigDecimal seriesFromMiddle(double z) {
    BigDecimal square = new BigDecimal(z).multiply(new BigDecimal(z), DIGITS);
    BigDecimal power = new BigDecimal(z);
    BigDecimal sum = BigDecimal.ZERO;
    for (int n = 0; n < 200; n++) {
      sum = sum.add(power.divide(BigDecimal.valueOf(2L * n + 1), DIGITS), DIGITS);
      power = power.multiply(square, DIGITS).divide(BigDecimal.valueOf(-2L * (n + 1)), DIGITS);
    }
    return sum.divide(rootOfTwoPi(), DIGITS);
  }

  /** Q(z) = φ(z)/(z + 1/(z + 2/(z + 3/(z + …)))), Abramowitz and Stegun 26.2.14. */
  private static double farOut(double z) {
    BigDecimal x = new BigDecimal(z);
    BigDecimal fraction = x;
    for (int n = 400; n > 0; n--) {
      fraction = x.add(BigDecimal.valueOf(n).divide(fraction, DIGITS), DIGITS);
    }
    return power(x.multiply(x).divide(BigDecimal.valueOf(-2), DIGITS))
        .divide(fraction.multiply(rootOfTwoPi(), DIGITS), DIGITS)
        .doubleValue();
  }

  /** e to a power at or below 0, halved until its series is short. */
  private static BigDecimal power(BigDecimal of) {
    BigDecimal part = of.divide(BigDecimal.valueOf(1024), DIGITS);
    BigDecimal term = BigDecimal.ONE;
    BigDecimal sum = BigDecimal.ZERO;
    for (int n = 1; n < 80; n++) {
      sum = sum.add(term, DIGITS);
      term = term.multiply(part, DIGITS).divide(BigDecimal.valueOf(n), DIGITS);
    }
    return sum.pow(1024, DIGITS);
  }

  private static BigDecimal rootOfTwoPi() {
    BigDecimal pi = new BigDecimal("3.14159265358979323846264338327950288419716939937510582097494");
    return pi.multiply(BigDecimal.valueOf(2)).sqrt(DIGITS);
  }
}
