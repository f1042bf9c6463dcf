package sagwright.modulus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.uncertainty.Estimate;

class ModulusAlongTest {
  private static final ModulusAlong STRAIGHT =
      ModulusAlong.straight(
          new double[] {0, 1000, 1500},
          new double[] {10000, 12000, 11000},
          new double[][] {{4, 1, 0}, {1, 9, 0}, {0, 0, 1}});

  private static final ModulusAlong PIECES =
      ModulusAlong.pieces(
          new double[] {400, 900}, new double[] {10000, 12000, 11000}, new double[3][3]);

  @ParameterizedTest
  @CsvSource({
    "-5, 10000",
    "0, 10000",
    "500, 11000",
    "1000, 12000",
    "1250, 11500",
    "1500, 11000",
    "1600, 11000"
  })
  void straightRunsFromKnotToKnotAndStaysBeyond(double x, double modulus) {
    assertEquals(modulus, STRAIGHT.at(x), 1e-9);
    assertEquals(
        1, STRAIGHT.shareOf(0, x) + STRAIGHT.shareOf(1, x) + STRAIGHT.shareOf(2, x), 1e-15);
  }

  @ParameterizedTest
  @CsvSource({"-5, 10000", "399, 10000", "401, 12000", "899, 12000", "901, 11000", "2000, 11000"})
  void piecesAreConstantBetweenBorders(double x, double modulus) {
    assertEquals(modulus, PIECES.at(x));
  }

  @Test
  void oneModulusIsOnePiece() {
    ModulusAlong one = ModulusAlong.constant(new Estimate(12340, 55));
    assertFalse(one.variesAlong());
    assertTrue(PIECES.variesAlong());
    assertEquals(12340, one.at(700));
    assertEquals(55 * 55, one.covarianceMPa2()[0][0]);
    assertEquals(0, one.breaksMm().length);
  }

  @Test
  void whatDoesNotGoTogetherIsRefused() {
    double[][] square = new double[2][2];
    assertThrows(
        IllegalArgumentException.class,
        () -> ModulusAlong.straight(new double[] {5, 5}, new double[] {1, 1}, square));
    assertThrows(
        IllegalArgumentException.class,
        () -> ModulusAlong.pieces(new double[] {5}, new double[] {1, -1}, square));
    assertThrows(
        IllegalArgumentException.class,
        () -> ModulusAlong.pieces(new double[] {5}, new double[] {1, 1}, new double[1][1]));
    assertThrows(
        IllegalArgumentException.class,
        () -> ModulusAlong.pieces(new double[] {5, 6}, new double[] {1, 1}, square));
  }
}
