package sagwright.job;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers that somebody has typed or set, in as few digits as they were. */
final class PlainNumber {
  /** More digits than anybody types; what is behind them comes of reckoning in between. */
  private static final MathContext DIGITS = new MathContext(6);

  private PlainNumber() {}

  static String of(double number) {
    return BigDecimal.valueOf(number).round(DIGITS).stripTrailingZeros().toPlainString();
  }
}
