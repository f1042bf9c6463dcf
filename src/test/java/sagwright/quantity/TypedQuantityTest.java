package sagwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedQuantityTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "58 in|1473.2",
        "58in|1473.2",
        "58 IN|1473.2",
        "58 inches|1473.2",
        "58 in.|1473.2",
        "58\"|1473.2",
        "58″|1473.2",
        "58”|1473.2",
        "58''|1473.2",
        "58½\"|1485.9",
        "58 1/2 in|1485.9",
        "58-1/2 in|1485.9",
        "58 1⁄2 in|1485.9",
        "⅜ in|9.525",
        "3/8\"|9.525",
        "1473|1473",
        "1473.0|1473",
        "1473,0|1473",
        "147,3 cm|1473",
        "147.3cm|1473",
        "1.473 m|1473",
        "1,4732 m|1473.2",
        "0,125 in|3.175",
        ".5 in|12.7",
        ",5 cm|5",
        "9.5mm|9.5",
        "9,5 mm|9.5",
        "9,5 Millimetres|9.5",
        "1,473.0|1473",
        "1.473,0|1473",
        "1 473|1473",
        "1\u202f473,5|1473.5",
        "1\u2009473 mm|1473",
        "1,234,567|1234567",
        "1.234.567|1234567",
        "1,234,567.5|1234567.5",
        "4 ft 10 in|1473.2",
        "4' 10\"|1473.2",
        "4'10\"|1473.2",
        "4′10½″|1485.9",
        "4'-10\"|1473.2",
        "4 feet 10 1/2 inches|1485.9",
        "4ft|1219.2",
        "1 m 47 cm 3 mm|1473",
        "  58   in  |1473.2",
        "-0.5|-0.5",
        "−0,5 mm|-0.5",
        "+3|3",
        "-1 ft 6 in|-457.2",
        "0|0",
      })
  void readsALength(String typed, double mm) throws UnreadableQuantityException {
    assertEquals(mm, TypedQuantity.parse(typed, Dimension.LENGTH));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "18½ oz|524.4661778125",
        "18 1/2 oz|524.4661778125",
        "18.5oz|524.4661778125",
        "18,5 ounces|524.4661778125",
        "18¾ oz|531.55355859375",
        "17⅛ oz|485.485583515625",
        "1 lb 2 oz|510.29141625",
        "1 lb 2½ oz|524.4661778125",
        "510|510",
        "0.51 kg|510",
        "0,51 kilos|510",
        "524,5 g|524.5",
      })
  void readsAMass(String typed, double grams) throws UnreadableQuantityException {
    assertEquals(grams, TypedQuantity.parse(typed, Dimension.MASS), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "20 N|20",
        "20|20",
        "2 kgf|19.6133",
        "500 gf|4.903325",
        "14 lbf|62.275102613647",
      })
  void readsALoad(String typed, double newtons) throws UnreadableQuantityException {
    assertEquals(newtons, TypedQuantity.parse(typed, Dimension.LOAD), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2,25 N/mm|STIFFNESS|2.25",
        "12.8 lbf/in|STIFFNESS|2.241623491154897",
        "12,34 GPa|MODULUS|12340",
        "12340|MODULUS|12340",
        "8500|DENSITY|8500",
        "8,5 g/cm³|DENSITY|8500",
        "8.5g/cm3|DENSITY|8500",
        "690 kg/m³|DENSITY|690",
        "5 %|SHARE|5",
        "7½|SHARE|7.5",
      })
  void readsWhatAnAskIsMadeOf(String typed, Dimension dimension, double expected)
      throws UnreadableQuantityException {
    assertEquals(expected, TypedQuantity.parse(typed, dimension), 1e-12);
  }

  @Test
  void takesABareNumberInTheUnitThatTheFieldShows() throws UnreadableQuantityException {
    assertEquals(1473.2, TypedQuantity.parse("58", Unit.INCH));
    assertEquals(1473, TypedQuantity.parse("1473 mm", Unit.INCH));
    assertEquals(12340, TypedQuantity.parse("12,34", Unit.GIGAPASCAL));
    assertEquals(18.5 * 28.349523125, TypedQuantity.parse("18½", Unit.OUNCE), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1,473|1,473 may mean 1473 or 1.473: write it in one of these two ways",
        "147,300 cm|147,300 may mean 147300 or 147.300",
        "11/2 in|11/2 may have lost a space before its fraction",
        "18 5/4 oz|18 5/4 may have lost a space",
        "1/0 in|1/0 divides by 0",
        "4 10 in|4 10 is no number",
        "4 ft 10|the last number wants its unit",
        "4 ft 14 in|the in make one ft or more",
        "4.5 ft 10 in|do not follow each other",
        "10 in 4 ft|do not follow each other",
        "58 in 3 in|do not follow each other",
        "58 furlongs|furlongs is none of mm, cm, m, in, ft",
        "58 g|g is a mass, not a length (mm, cm, m, in, ft)",
        "1.2.3|1.2.3 is no number",
        "1,2,3|1,2,3 is no number",
        "1,47,300|1,47,300 is no number",
        "58.|58. is no number",
        "58 in x|58 in x is no length like 12.5 mm",
        "abc|abc is no length",
        "1e3|e is none of",
        "--5|-5 is no length",
        "58²|58²: cannot read ²",
        "⅟ in|cannot read ⅟",
        "١٢|is no length",
        "NaN|is no length",
        "Infinity|is no length",
      })
  void refusesWhatCouldBeReadInTwoWaysOrInNone(String typed, String said) {
    UnreadableQuantityException refused =
        assertThrows(
            UnreadableQuantityException.class, () -> TypedQuantity.parse(typed, Dimension.LENGTH));
    assertTrue(refused.getMessage().contains(said), refused.getMessage());
    assertFalse(refused.getMessage().contains("\n"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "-", "\u00a0"})
  void saysThatNothingIsTyped(String typed) {
    UnreadableQuantityException refused =
        assertThrows(
            UnreadableQuantityException.class, () -> TypedQuantity.parse(typed, Unit.OUNCE));
    assertEquals("no mass is typed, as 12.5 oz", refused.getMessage());
  }

  @Test
  void refusesWhatNoDoubleHolds() {
    String huge = "9".repeat(400);
    UnreadableQuantityException refused =
        assertThrows(
            UnreadableQuantityException.class, () -> TypedQuantity.parse(huge, Dimension.LENGTH));
    assertTrue(refused.getMessage().endsWith(" is too large"));
  }

  @Test
  void tellsAMassFromTheLoadThatItMakes() {
    UnreadableQuantityException refused =
        assertThrows(
            UnreadableQuantityException.class, () -> TypedQuantity.parse("2 kg", Dimension.LOAD));
    assertEquals("2 kg: kg is a mass, not a load; its weight is written kgf", refused.getMessage());
  }

  /** What the program shows it also reads, in every unit and under locales with a comma. */
  @Test
  void readsBackWhatItShows() throws UnreadableQuantityException {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"en", "de", "tr", "ar-EG", "fr"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        SplittableRandom random = new SplittableRandom(20260302);
        for (Unit unit : Unit.values()) {
          for (int i = 0; i < 200; i++) {
            BigDecimal value = BigDecimal.valueOf(random.nextLong(-9_999_999, 9_999_999), 4);
            double base = unit.toBase(value);
            String text = unit.text(base, 4);
            assertEquals(base, TypedQuantity.parse(text, unit.dimension()), text + " in " + tag);
          }
        }
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  /** A comma never makes a number a thousand times what a reader with a decimal comma meant. */
  @Test
  void neverReadsADecimalCommaAsThousands() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 5000; i++) {
      long whole = random.nextLong(0, 100_000);
      int places = random.nextInt(1, 6);
      long part = random.nextLong(0, (long) Math.pow(10, places));
      String typed = whole + "," + String.format(Locale.ROOT, "%0" + places + "d", part);
      double meant = new BigDecimal(typed.replace(',', '.')).doubleValue();
      try {
        assertEquals(meant, TypedQuantity.parse(typed, Dimension.LENGTH), typed);
      } catch (UnreadableQuantityException refused) {
        assertEquals(3, places, typed);
        assertTrue(whole > 0 && whole < 1000, typed);
      }
    }
  }
}
