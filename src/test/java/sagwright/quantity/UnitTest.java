package sagwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
  /**
   * NIST Special Publication 811 (2008), appendix B.8: the factors as printed, to SI. Those printed
   * in bold there are exact; the others carry seven digits. The decimal multiples are the SI
   * prefixes.
   */
  @ParameterizedTest
  @CsvSource({
    "MILLIMETRE, 1, 0",
    "CENTIMETRE, 10, 0",
    "METRE, 1000, 0",
    "INCH, 25.4, 0",
    "FOOT, 304.8, 0",
    "GRAM, 1, 0",
    "KILOGRAM, 1000, 0",
    "OUNCE, 28.34952, 5e-6",
    "POUND, 453.59237, 0",
    "NEWTON, 1, 0",
    "KILOGRAM_FORCE, 9.80665, 0",
    "GRAM_FORCE, 0.00980665, 0",
    "POUND_FORCE, 4.448222, 5e-7",
    "OUNCE_FORCE, 0.2780139, 5e-8",
    "NEWTON_PER_MILLIMETRE, 1, 0",
    "POUND_FORCE_PER_INCH, 0.1751268, 5e-8",
    "MEGAPASCAL, 1, 0",
    "GIGAPASCAL, 1000, 0",
    "POUND_PER_SQUARE_INCH, 0.006894757, 5e-10",
    "KILOGRAM_PER_CUBIC_METRE, 1, 0",
    "GRAM_PER_CUBIC_CENTIMETRE, 1000, 0",
    "PERCENT, 1, 0",
  })
  void agreesWithThePublishedFactor(Unit unit, double printed, double lastDigit) {
    assertEquals(printed, unit.toBase(BigDecimal.ONE), lastDigit);
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void comesBackFromItsBaseUnit(Unit unit) {
    double base = unit.toBase(new BigDecimal("12.5"));
    assertEquals(12.5, unit.fromBase(base), 1e-14);
  }

  /** The derived factors follow from the exact ones. */
  @Test
  void derivedFactorsHangTogether() {
    double pound = 453.59237;
    assertEquals(pound / 16, Unit.OUNCE.toBase(BigDecimal.ONE), 1e-12);
    double poundForce = pound / 1000 * 9.80665;
    assertEquals(poundForce, Unit.POUND_FORCE.toBase(BigDecimal.ONE), 1e-12);
    assertEquals(poundForce / 16, Unit.OUNCE_FORCE.toBase(BigDecimal.ONE), 1e-13);
    assertEquals(poundForce / 25.4, Unit.POUND_FORCE_PER_INCH.toBase(BigDecimal.ONE), 1e-16);
    double psi = poundForce / (25.4 * 25.4);
    assertEquals(psi, Unit.POUND_PER_SQUARE_INCH.toBase(BigDecimal.ONE), 1e-17);
    assertEquals(12, Unit.INCH.in(Unit.FOOT).doubleValue());
    assertEquals(16, Unit.OUNCE.in(Unit.POUND).doubleValue());
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void everyDimensionHasABaseUnitOfItsOwn(Dimension dimension) {
    assertEquals(dimension, dimension.base().dimension());
    assertEquals(1, dimension.base().toBase(BigDecimal.ONE));
  }

  /** One name, one unit; its symbol is one of its names. */
  @Test
  void noNameMeansTwoUnits() {
    EnumSet<Unit> found = EnumSet.noneOf(Unit.class);
    for (Unit unit : Unit.values()) {
      assertEquals(unit, Unit.named(unit.symbol()).orElseThrow());
      found.add(Unit.named(unit.symbol().toUpperCase(java.util.Locale.ROOT)).orElseThrow());
    }
    assertEquals(EnumSet.copyOf(Arrays.asList(Unit.values())), found);
    assertTrue(Unit.named("").isEmpty());
    assertTrue(Unit.named(".").isEmpty());
  }

  /** 58 in and 18 oz are what cue makers speak of: 1473.2 mm and 510.2914162 g. */
  @Test
  void showsAQuantityInTheUnitAskedFor() {
    assertEquals("58.00 in", Unit.INCH.text(1473.2, 2));
    assertEquals("18.0 oz", Unit.OUNCE.text(510.2914162, 1));
    assertEquals("12.3 GPa", Unit.GIGAPASCAL.text(12340, 1));
    assertEquals("12340 MPa", Unit.MEGAPASCAL.text(12342, -1));
    assertEquals("94 %", Unit.PERCENT.text(94.2, 0));
  }

  /** 25.4 mm an inch and 28.349523125 g an ounce, by definition. */
  @Test
  void lengthsAndMassesStandSideBySide() {
    assertEquals("1473.2 mm · 58.00 in", SideBySide.length(1473.2));
    assertEquals("9.50 mm · 0.374 in", SideBySide.length(9.5));
    assertEquals("524 g · 18.50 oz", SideBySide.mass(18.5 * 28.349523125));
  }
}
