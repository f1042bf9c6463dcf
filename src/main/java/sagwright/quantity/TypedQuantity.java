package sagwright.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a quantity as a maker types it: {@code 58 in}, {@code 58"}, {@code 1473}, {@code 147,3 cm},
 * {@code 18½ oz}, {@code 4 ft 10 in}, {@code 9.5mm}, {@code 1 lb 2 oz}.
 *
 * <p>Numbers as {@link TypedNumber} has them. A unit may stand close to its number and in any case.
 * Several numbers, each with its unit, add up where the units fall ({@code 4' 10½"}): all but the
 * last are whole, and each is less than one of the unit before it. What could be read in two ways
 * is refused with one line.
 */
public final class TypedQuantity {
  private static final String UNIT = "[\"'%]|\\p{L}+(?:/\\p{L}+3?)?\\.?";
  private static final Pattern PART =
      Pattern.compile("(?<number>[0-9.,](?:[0-9., /-]*[0-9.,])?) ?(?<unit>" + UNIT + ")? ?");

  private TypedQuantity() {}

  /**
   * Reads a quantity.
   *
   * @param bareUnit the unit of a number that has none, as the field shows it
   * @return in the base unit of {@code bareUnit}'s dimension (mm, g, N, N/mm, MPa, kg/m³, %); a
   *     sign is kept
   */
  public static double parse(String typed, Unit bareUnit) throws UnreadableQuantityException {
    String plain = TypedText.plain(typed);
    boolean negative = plain.startsWith("-");
    String unsigned = negative || plain.startsWith("+") ? plain.substring(1).trim() : plain;
    if (unsigned.isEmpty()) {
      throw new UnreadableQuantityException(
          "no " + bareUnit.dimension().word() + " is typed, as 12.5 " + bareUnit.symbol());
    }
    double size = unsigned(unsigned, bareUnit);
    return negative ? -size : size;
  }

  /** Reads a quantity whose bare number is in the dimension's base unit. */
  public static double parse(String typed, Dimension dimension) throws UnreadableQuantityException {
    return parse(typed, dimension.base());
  }

  private static double unsigned(String plain, Unit bareUnit) throws UnreadableQuantityException {
    Matcher part = PART.matcher(plain);
    BigDecimal sum = BigDecimal.ZERO;
    Unit before = null;
    int from = 0;
    while (from < plain.length()) {
      part.region(joined(plain, from, before), plain.length());
      if (!part.lookingAt() || !endsWell(plain, part.end())) {
        throw new UnreadableQuantityException(
            plain + " is no " + bareUnit.dimension().word() + " like 12.5 " + bareUnit.symbol());
      }
      BigDecimal number = TypedNumber.parse(part.group("number").trim());
      Unit unit = unitOf(part.group("unit"), bareUnit, plain, before);
      if (before != null) {
        sum = carriedOn(sum, before, unit, plain);
        checkFollows(number, unit, before, plain);
      }
      sum = sum.add(number);
      before = unit;
      from = part.end();
    }
    double size = before.toBase(sum);
    if (!Double.isFinite(size)) {
      throw new UnreadableQuantityException(plain + " is too large");
    }
    return size;
  }

  /** Feet and inches may be tied by a hyphen, 4'-10". */
  private static int joined(String plain, int from, Unit before) {
    return before == Unit.FOOT && plain.charAt(from) == '-' ? from + 1 : from;
  }

  /** A part ends at the end, or where another number with its own unit begins. */
  private static boolean endsWell(String plain, int at) {
    return at == plain.length() || "0123456789-".indexOf(plain.charAt(at)) >= 0;
  }

  private static Unit unitOf(String written, Unit bareUnit, String plain, Unit before)
      throws UnreadableQuantityException {
    if (written == null) {
      if (before != null) {
        throw new UnreadableQuantityException(plain + ": the last number wants its unit");
      }
      return bareUnit;
    }
    Dimension dimension = bareUnit.dimension();
    Unit unit = Unit.named(written).orElse(null);
    if (unit == null) {
      throw new UnreadableQuantityException(
          plain + ": " + written + " is none of " + dimension.unitsInWords());
    }
    if (unit.dimension() != dimension) {
      throw new UnreadableQuantityException(plain + ": " + otherDimension(unit, dimension));
    }
    return unit;
  }

  private static String otherDimension(Unit unit, Dimension dimension) {
    String line = unit.symbol() + " is a " + unit.dimension().word() + ", not a ";
    boolean massForLoad = unit.dimension() == Dimension.MASS && dimension == Dimension.LOAD;
    return massForLoad
        ? line + "load; its weight is written " + unit.symbol() + "f"
        : line + dimension.word() + " (" + dimension.unitsInWords() + ")";
  }

  private static BigDecimal carriedOn(BigDecimal sum, Unit before, Unit unit, String plain)
      throws UnreadableQuantityException {
    if (!unit.isSmallerThan(before) || sum.stripTrailingZeros().scale() > 0) {
      throw new UnreadableQuantityException(
          plain + " mixes units that do not follow each other as 4 ft 10 in do");
    }
    return sum.multiply(unit.in(before));
  }

  private static void checkFollows(BigDecimal number, Unit unit, Unit before, String plain)
      throws UnreadableQuantityException {
    if (number.compareTo(unit.in(before)) >= 0) {
      throw new UnreadableQuantityException(
          plain + ": the " + unit.symbol() + " make one " + before.symbol() + " or more");
    }
  }
}
