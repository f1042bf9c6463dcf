package sagwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The units that makers type and read. Factors are exact by definition unless a line says
 * otherwise: inch, pound and ounce by the international yard and pound agreement of 1959, the
 * standard acceleration 9.80665 m/s² by the 3rd CGPM of 1901 (both in NIST Special Publication 811,
 * appendix B).
 */
public enum Unit {
  MILLIMETRE(Dimension.LENGTH, "mm", "1", "millimetre millimetres millimeter millimeters"),
  CENTIMETRE(Dimension.LENGTH, "cm", "10", "centimetre centimetres centimeter centimeters"),
  METRE(Dimension.LENGTH, "m", "1000", "metre metres meter meters"),
  INCH(Dimension.LENGTH, "in", "25.4", "\" inch inches"),
  FOOT(Dimension.LENGTH, "ft", "304.8", "' foot feet"),

  GRAM(Dimension.MASS, "g", "1", "gram grams gramme grammes"),
  KILOGRAM(Dimension.MASS, "kg", "1000", "kilo kilos kilogram kilograms"),
  OUNCE(Dimension.MASS, "oz", "28.349523125", "ounce ounces"),
  POUND(Dimension.MASS, "lb", "453.59237", "lbs pound pounds"),

  NEWTON(Dimension.LOAD, "N", "1", "newton newtons"),
  KILOGRAM_FORCE(Dimension.LOAD, "kgf", "9.80665", "kp"),
  GRAM_FORCE(Dimension.LOAD, "gf", "0.00980665", ""),
  POUND_FORCE(Dimension.LOAD, "lbf", "4.4482216152605", ""),
  OUNCE_FORCE(Dimension.LOAD, "ozf", "0.27801385095378125", ""),

  NEWTON_PER_MILLIMETRE(Dimension.STIFFNESS, "N/mm", "1", ""),
  /** 4.4482216152605/25.4, to 20 digits. */
  POUND_FORCE_PER_INCH(Dimension.STIFFNESS, "lbf/in", "0.17512683524647637795", ""),

  MEGAPASCAL(Dimension.MODULUS, "MPa", "1", ""),
  GIGAPASCAL(Dimension.MODULUS, "GPa", "1000", ""),
  /** 4.4482216152605/25.4², to 18 digits. */
  POUND_PER_SQUARE_INCH(Dimension.MODULUS, "psi", "0.00689475729316836134", ""),

  KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, "kg/m³", "1", "kg/m3"),
  GRAM_PER_CUBIC_CENTIMETRE(Dimension.DENSITY, "g/cm³", "1000", "g/cm3 g/cc"),

  PERCENT(Dimension.SHARE, "%", "1", "percent");

  private final Dimension dimension;
  private final String symbol;
  private final BigDecimal toBase;
  private final List<String> otherNames;

  Unit(Dimension dimension, String symbol, String toBase, String otherNames) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.toBase = new BigDecimal(toBase);
    this.otherNames = otherNames.isEmpty() ? List.of() : List.of(otherNames.split(" "));
  }

  public Dimension dimension() {
    return dimension;
  }

  /** As screen and paper write it. */
  public String symbol() {
    return symbol;
  }

  /** A value of this unit in the dimension's base unit, rounded once. */
  public double toBase(BigDecimal value) {
    return value.multiply(toBase).doubleValue();
  }

  /** A value in the dimension's base unit in this unit, rounded once. */
  public double fromBase(double baseValue) {
    return new BigDecimal(baseValue).divide(toBase, MathContext.DECIMAL128).doubleValue();
  }

  /**
   * A value for people, "58.00 in".
   *
   * @param baseValue in the dimension's base unit
   * @param decimals behind the point, negative to round to tens
   */
  public String text(double baseValue, int decimals) {
    return Figures.rounded(fromBase(baseValue), decimals) + " " + symbol;
  }

  /** How many of this unit make one of the greater one, 12 for inches in a foot. */
  BigDecimal in(Unit greater) {
    return greater.toBase.divide(toBase, MathContext.DECIMAL128);
  }

  boolean isSmallerThan(Unit other) {
    return toBase.compareTo(other.toBase) < 0;
  }

  /** The unit of that name or symbol, but for case; a full stop behind it is allowed. */
  static Optional<Unit> named(String written) {
    String name = written.endsWith(".") ? written.substring(0, written.length() - 1) : written;
    String lower = name.toLowerCase(Locale.ROOT);
    for (Unit unit : values()) {
      if (unit.symbol.toLowerCase(Locale.ROOT).equals(lower) || unit.otherNames.contains(lower)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
