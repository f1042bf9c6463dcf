package sagwright.run;

import java.math.BigDecimal;
import java.math.MathContext;

/** A number as people read it: three digits that count, never with an exponent. */
final class Figures {
  private static final MathContext THREE_DIGITS = new MathContext(3);

  private Figures() {}

  static String of(double value) {
    return new BigDecimal(value).round(THREE_DIGITS).stripTrailingZeros().toPlainString();
  }
}
