package sagwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {
  /** JCGM 100:2008, 7.2.6: two significant digits of an uncertainty suffice. */
  @ParameterizedTest
  @CsvSource({
    "12340, 107.66, 12340 ± 110",
    "2.295855986, 0.0593264, 2.296 ± 0.059",
    "2.295855986, 0.00996, 2.296 ± 0.010",
    "2.295855986, 0.0996, 2.30 ± 0.10",
    "4.1034, 0.011, 4.103 ± 0.011",
    "104.5, 9.96, 104 ± 10",
    "9.805, 0.5, 9.80 ± 0.50",
    "-0.004, 0.5, 0.00 ± 0.50",
    "-1.5, 0.5, −1.50 ± 0.50",
    "1234567, 45678, 1235000 ± 46000",
    "0, 3, 0.0 ± 3.0",
    "15, 0, 15.00",
    "12340.4, 0, 12340",
    "0.0123456, NaN, 0.01235",
    "NaN, 0.1, – ± 0.10",
  })
  void showsTwoDigitsOfThePlusMinusAndTheValueToTheSamePlace(
      double value, double plusMinus, String shown) {
    assertEquals(shown, Figures.withPlusMinus(value, plusMinus));
  }

  @Test
  void showsTheValueAloneToThePlaceOfItsPlusMinus() {
    assertEquals("12340", Figures.value(12342.7, 107.66));
    assertEquals("2.296", Figures.value(2.2958, 0.0593));
    assertEquals("0", Figures.value(0, 0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void knowsNoDecimalsWithoutAPlusMinus(double plusMinus) {
    assertThrows(IllegalArgumentException.class, () -> Figures.decimals(plusMinus));
  }

  @ParameterizedTest
  @CsvSource({
    "0.946, 0.95, 94",
    "0.9499999, 0.95, 94",
    "0.95, 0.95, 95",
    "0.954, 0.95, 95",
    "0.9446, 0.95, 94",
    "0.806, 0.95, 81",
    "0.9512, 0.955, 95",
    "0.9552, 0.955, 96",
    "0.9049, 0.9045, 91",
    "0.9996, 0.95, over 99",
    "1, 0.95, 100",
    "0.004, 0.95, under 1",
    "0, 0.95, 0",
    "0.98616, 0.99, 98",
  })
  void neverRoundsAChanceAcrossTheShopsSureness(double chance, double sureness, String shown) {
    assertEquals(shown, Figures.chancePercent(chance, sureness));
  }

  /** Whatever the chance, what is shown lies on the side of the sureness where it lies itself. */
  @Test
  void keepsEveryChanceOnItsOwnSide() {
    for (double sureness : new double[] {0.8, 0.9, 0.95, 0.99}) {
      for (int i = 0; i <= 10_000; i++) {
        double chance = i / 10_000.0;
        String shown = Figures.chancePercent(chance, sureness);
        double percent = Double.parseDouble(shown.replace("over ", "").replace("under 1", "0"));
        if (!shown.startsWith("over")) {
          assertEquals(chance >= sureness, percent >= 100 * sureness - 1e-9, shown + " " + chance);
        }
      }
    }
  }

  @Test
  void padsToOneWidthOnTheDecimalPoint() {
    assertEquals(
        List.of(
            "\u2007\u2007\u20074.10",
            "\u2007\u200712.5\u2007",
            "1234\u2008\u2007\u2007",
            "\u2007\u2007−0.25"),
        Figures.alignedOnThePoint(List.of("4.10", "12.5", "1234", "−0.25")));
    assertEquals(List.of("\u20079", "10"), Figures.alignedOnThePoint(List.of("9", "10")));
    assertEquals(List.of(), Figures.alignedOnThePoint(List.of()));
  }

  @Test
  void writesThePointUnderEveryLocale() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      assertEquals("1473.20", Figures.rounded(1473.2, 2));
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1473.25, 1, 1473.2",
    "1473.35, 1, 1473.4",
    "1e21, 0, 1000000000000000000000",
    "-0.04, 1, 0.0",
    "1e-9, 2, 0.00",
    "12345, -2, 12300",
  })
  void roundsHalvesToEvenAndShowsNoMinusBeforeNothing(double value, int decimals, String shown) {
    assertEquals(shown, Figures.rounded(value, decimals));
  }

  @Test
  void aColumnHasTheDecimalsThatEachOfItsPlusMinusAllows() {
    assertEquals(2, Figures.decimalsForAll(List.of(0.23, 0.06, 0.9), 4)); // 2, 3, 2
    assertEquals(1, Figures.decimalsForAll(List.of(0.23, 1.3), 4));
    assertEquals(3, Figures.decimalsForAll(List.of(0.0, 0.06, Double.NaN), 4));
    assertEquals(4, Figures.decimalsForAll(List.of(), 4));
  }

  @Test
  void anAskHasTwoDecimalsAndMoreWhereTheyWereTyped() {
    assertEquals("2.30", Figures.asAsked(2.3));
    assertEquals("2.00", Figures.asAsked(2));
    assertEquals("2.275", Figures.asAsked(2.275));
  }
}
