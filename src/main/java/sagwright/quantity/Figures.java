package sagwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;

/**
 * Numbers for people: as many digits as the uncertainty allows and no more. A ± is shown to two
 * significant digits (JCGM 100, 7.2.6), the value to the same place; the point is the decimal mark
 * everywhere.
 */
public final class Figures {
  /** As wide as a figure. */
  private static final char FIGURE_SPACE = '\u2007';

  /** As wide as a point. */
  private static final char PUNCTUATION_SPACE = '\u2008';

  private static final char MINUS = '\u2212';
  private static final int SIGNIFICANT_OF_PLUS_MINUS = 2;

  /** Digits of a value that no uncertainty comes with. */
  private static final int SIGNIFICANT_WITHOUT_PLUS_MINUS = 4;

  private Figures() {}

  /**
   * How many decimals the ± allows: so many that it shows two significant digits itself. Negative
   * where it must be rounded to tens or more.
   *
   * @param plusMinus above 0 and finite
   */
  public static int decimals(double plusMinus) {
    if (!(plusMinus > 0) || !Double.isFinite(plusMinus)) {
      throw new IllegalArgumentException("a ± lies above 0: " + plusMinus);
    }
    int decimals = decimalsOf(BigDecimal.valueOf(plusMinus), SIGNIFICANT_OF_PLUS_MINUS);
    BigDecimal rounded = round(plusMinus, decimals); // 0.0996 becomes 0.100: one digit too many
    return decimalsOf(rounded, SIGNIFICANT_OF_PLUS_MINUS);
  }

  /**
   * One number of decimals for a column of values: as many as each ± allows. A ± of 0, or one that
   * is not known, says nothing.
   *
   * @param otherwise where no ± says anything
   */
  public static int decimalsForAll(Collection<Double> plusMinus, int otherwise) {
    return plusMinus.stream()
        .filter(each -> each > 0 && Double.isFinite(each))
        .mapToInt(Figures::decimals)
        .min()
        .orElse(otherwise);
  }

  /** The value alone, to the place that its ± allows; four digits where the ± is 0 or not known. */
  public static String value(double value, double plusMinus) {
    if (plusMinus > 0 && Double.isFinite(plusMinus)) {
      return rounded(value, decimals(plusMinus));
    }
    if (value == 0 || !Double.isFinite(value)) {
      return rounded(value, 0);
    }
    int decimals = decimalsOf(BigDecimal.valueOf(value), SIGNIFICANT_WITHOUT_PLUS_MINUS);
    return rounded(value, Math.max(decimals, 0));
  }

  /** Value and ±, "2.296 ± 0.059"; the value alone where the ± is 0 or not known. */
  public static String withPlusMinus(double value, double plusMinus) {
    if (!(plusMinus > 0) || !Double.isFinite(plusMinus)) {
      return value(value, plusMinus);
    }
    int decimals = decimals(plusMinus);
    return rounded(value, decimals) + " ± " + rounded(plusMinus, decimals);
  }

  /** A number that somebody typed, without a tail of zeros: "2.25", "5". */
  public static String asTyped(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** The same with two decimals at the least, as a stiffness is asked for: "2.30", "2.275". */
  public static String asAsked(double value) {
    String typed = asTyped(value);
    return behindPoint(typed) < 2 ? rounded(value, 2) : typed;
  }

  /**
   * A value to so many decimals, halves to even; "–" where it is not finite.
   *
   * @param decimals behind the point, negative to round to tens or more
   */
  public static String rounded(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    BigDecimal rounded = round(value, decimals);
    String digits = rounded.abs().toPlainString();
    return rounded.signum() < 0 ? MINUS + digits : digits;
  }

  /**
   * A chance in whole percent, never rounded across the shop's sureness (0.946 stays 94 where 95 is
   * asked for) and never to a certainty that it is not: "over 99", "under 1".
   *
   * @param chance 0 to 1
   * @param sureness the chance from which the shop takes a thing as sure, 0 to 1
   */
  public static String chancePercent(double chance, double sureness) {
    BigDecimal percent = BigDecimal.valueOf(chance).movePointRight(2);
    BigDecimal limit = BigDecimal.valueOf(sureness).movePointRight(2);
    BigDecimal shown = percent.setScale(0, RoundingMode.HALF_EVEN);
    if (percent.compareTo(limit) < 0 && shown.compareTo(limit) >= 0) {
      shown = percent.setScale(0, RoundingMode.FLOOR);
    } else if (percent.compareTo(limit) >= 0 && shown.compareTo(limit) < 0) {
      shown = percent.setScale(0, RoundingMode.CEILING);
    }
    if (shown.intValueExact() == 100 && chance < 1) {
      return "over 99";
    }
    return shown.signum() == 0 && chance > 0 ? "under 1" : shown.toPlainString();
  }

  /** How a chance has changed, each as {@link #chancePercent} has it. */
  public static String chanceChange(double was, double is, double sureness) {
    String before = chancePercent(was, sureness);
    String now = chancePercent(is, sureness);
    return before.equals(now)
        ? "still " + now + " in 100"
        : "was " + before + " in 100, now " + now;
  }

  /**
   * Pads numbers to one width with figure spaces, so that right-aligned they stand on their decimal
   * point.
   */
  public static List<String> alignedOnThePoint(List<String> numbers) {
    int before = numbers.stream().mapToInt(Figures::beforePoint).max().orElse(0);
    int behind = numbers.stream().mapToInt(Figures::behindPoint).max().orElse(0);
    return numbers.stream().map(number -> padded(number, before, behind)).toList();
  }

  private static String padded(String number, int before, int behind) {
    StringBuilder padded = new StringBuilder();
    padded.append(String.valueOf(FIGURE_SPACE).repeat(before - beforePoint(number)));
    padded.append(number);
    if (behind > 0 && number.indexOf('.') < 0) {
      padded.append(PUNCTUATION_SPACE);
    }
    padded.append(String.valueOf(FIGURE_SPACE).repeat(behind - behindPoint(number)));
    return padded.toString();
  }

  private static int beforePoint(String number) {
    int point = number.indexOf('.');
    return point < 0 ? number.length() : point;
  }

  private static int behindPoint(String number) {
    int point = number.indexOf('.');
    return point < 0 ? 0 : number.length() - point - 1;
  }

  private static BigDecimal round(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, RoundingMode.HALF_EVEN)
        .setScale(Math.max(decimals, 0));
  }

  /** Decimals that leave so many significant digits. */
  private static int decimalsOf(BigDecimal value, int significant) {
    int exponent = value.precision() - value.scale() - 1;
    return significant - 1 - exponent;
  }
}
