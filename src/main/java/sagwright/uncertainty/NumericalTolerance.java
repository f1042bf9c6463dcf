package sagwright.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How closely a figure is meant that is written with so many digits of its uncertainty: δ = ½·10^l,
 * where the standard uncertainty, rounded to those digits, is a whole number times 10^l (JCGM
 * 101:2008, 7.9.2).
 */
public final class NumericalTolerance {
  private NumericalTolerance() {}

  /**
   * @param standardUncertainty above 0
   * @param digits of it that count, 1 or 2
   */
  public static double of(double standardUncertainty, int digits) {
    BigDecimal rounded =
        new BigDecimal(standardUncertainty).round(new MathContext(digits, RoundingMode.HALF_UP));
    int lastDigit = rounded.precision() - rounded.scale() - digits;
    return 0.5 * Math.pow(10, lastDigit);
  }
}
