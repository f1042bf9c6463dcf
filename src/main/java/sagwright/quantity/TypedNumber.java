package sagwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people type it: {@code 1473}, {@code 147.3}, {@code 147,3}, {@code 18 1/2}, {@code
 * 1,473.0}, {@code 1.473,0}, {@code 1 473}.
 *
 * <p>A point alone is always the decimal mark, as everywhere in the program. A comma alone is the
 * decimal mark too, but where exactly three figures follow one to three that do not begin with 0 it
 * could as well part thousands ({@code 1,473}): that is refused, never guessed. With both marks, or
 * a mark that comes twice, only one reading is left.
 */
final class TypedNumber {
  private static final Pattern FRACTION =
      Pattern.compile("(?:(?<whole>\\d+)[ -]+)?(?<over>\\d+) ?/ ?(?<under>\\d+)");
  private static final Pattern DECIMAL = Pattern.compile("\\d+|\\d*\\.\\d+|\\d*,\\d+");
  private static final Pattern AMBIGUOUS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
  private static final Pattern GROUPED =
      Pattern.compile(
          "[1-9]\\d{0,2}(?:"
              + "(?:,\\d{3})+\\.\\d+|(?:,\\d{3}){2,}"
              + "|(?:\\.\\d{3})+,\\d+|(?:\\.\\d{3}){2,}"
              + "|(?: \\d{3})+(?:[.,]\\d+)?)");

  private TypedNumber() {}

  /**
   * @param written digits with their marks, no sign and no unit
   */
  static BigDecimal parse(String written) throws UnreadableQuantityException {
    Matcher fraction = FRACTION.matcher(written);
    if (fraction.matches()) {
      return fraction(fraction, written);
    }
    if (AMBIGUOUS.matcher(written).matches()) {
      throw new UnreadableQuantityException(
          written
              + " may mean "
              + written.replace(",", "")
              + " or "
              + written.replace(',', '.')
              + ": write it in one of these two ways");
    }
    if (DECIMAL.matcher(written).matches()) {
      return new BigDecimal(written.replace(',', '.'));
    }
    if (GROUPED.matcher(written).matches()) {
      return new BigDecimal(ungrouped(written));
    }
    throw new UnreadableQuantityException(written + " is no number");
  }

  private static BigDecimal fraction(Matcher fraction, String written)
      throws UnreadableQuantityException {
    String whole = fraction.group("whole");
    BigDecimal over = new BigDecimal(fraction.group("over"));
    BigDecimal under = new BigDecimal(fraction.group("under"));
    if (under.signum() == 0) {
      throw new UnreadableQuantityException(written + " divides by 0");
    }
    boolean improper = over.compareTo(under) >= 0;
    if (improper && (whole != null || fraction.group("over").length() > 1)) {
      throw new UnreadableQuantityException(
          written + " may have lost a space before its fraction: write it as 18 1/2 or 18.5");
    }
    BigDecimal part = over.divide(under, MathContext.DECIMAL128);
    return whole == null ? part : part.add(new BigDecimal(whole));
  }

  /** Takes the group marks out: all but the last mark where it is another one than the first. */
  private static String ungrouped(String written) {
    int last = Math.max(written.lastIndexOf(','), written.lastIndexOf('.'));
    boolean groupsOnly = last < 0 || written.indexOf(written.charAt(last)) != last;
    if (groupsOnly) {
      return written.replaceAll("[., ]", "");
    }
    return written.substring(0, last).replaceAll("[., ]", "") + "." + written.substring(last + 1);
  }
}
