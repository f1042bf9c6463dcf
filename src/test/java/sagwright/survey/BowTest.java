package sagwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BowTest {
  private static double[] everyDegrees(double step) {
    double[] turns = new double[(int) Math.round(360 / step)];
    for (int i = 0; i < turns.length; i++) {
      turns[i] = step * i;
    }
    return turns;
  }

  private static double[] readings(double[] turns, double size, double side, double oval) {
    double[] readings = new double[turns.length];
    for (int i = 0; i < turns.length; i++) {
      readings[i] =
          7.3
              + size * Math.cos(Math.toRadians(turns[i] - side))
              + oval * Math.cos(Math.toRadians(2 * turns[i] - 50));
    }
    return readings;
  }

  @Test
  void sizeAndSideComeBackWhateverTheZeroAndTheOutOfRound() {
    double[] turns = everyDegrees(45);
    Bow bow = Bow.of(turns, readings(turns, 0.31, 222, 0.08), 0.005);
    assertEquals(0.31, bow.sizeMm(), 1e-12);
    assertEquals(222, bow.sideDegrees(), 1e-9);
    assertTrue(bow.isSeen());
    // n even readings: u = gauge·√(2/n), JCGM 100, 5.1 on the first harmonic's sums.
    assertEquals(0.005 * Math.sqrt(2.0 / 8), bow.sizeStdUncertaintyMm(), 1e-12);
    assertEquals(Math.toDegrees(0.0025 / 0.31), bow.sideStdUncertaintyDegrees(), 1e-9);
  }

  @Test
  void fourReadingsDo() {
    double[] turns = everyDegrees(90);
    Bow bow = Bow.of(turns, readings(turns, 0.2, 10, 0), 0.005);
    assertEquals(0.2, bow.sizeMm(), 1e-12);
    assertEquals(10, bow.sideDegrees(), 1e-9);
  }

  @Test
  void twoTurnsTellNoBow() {
    double[] turns = {0, 180, 0, 180};
    assertThrows(
        IllegalArgumentException.class, () -> Bow.of(turns, new double[] {1, 2, 1, 2}, 0.005));
  }

  @Test
  void aStraightShaftIsSeldomSeenBowedAndTheUncertaintyHolds() {
    Random random = new Random(5);
    double[] turns = everyDegrees(45);
    int seen = 0;
    int held = 0;
    int n = 1000;
    for (int i = 0; i < n; i++) {
      double[] straight = readings(turns, 0, 0, 0);
      double[] bowed = readings(turns, 0.1, 140, 0.02);
      for (int j = 0; j < turns.length; j++) {
        straight[j] += 0.005 * random.nextGaussian();
        bowed[j] += 0.005 * random.nextGaussian();
      }
      seen += Bow.of(turns, straight, 0.005).isSeen() ? 1 : 0;
      Bow bow = Bow.of(turns, bowed, 0.005);
      held += Math.abs(bow.sizeMm() - 0.1) < 1.96 * bow.sizeStdUncertaintyMm() ? 1 : 0;
    }
    assertTrue(seen < 25, seen + " of " + n);
    assertTrue(held > 930 && held < 970, held + " of " + n);
  }

  @Test
  void scatterBeyondTheGaugesMakesTheUncertaintyGreater() {
    double[] turns = everyDegrees(45);
    double[] rough = readings(turns, 0.2, 0, 0);
    for (int i = 0; i < rough.length; i++) {
      rough[i] += 0.05 * Math.cos(Math.toRadians(3 * turns[i]));
    }
    Bow bow = Bow.of(turns, rough, 0.005);
    assertTrue(bow.sizeStdUncertaintyMm() > 0.01);
    assertFalse(bow.sizeMm() > 0.25);
  }
}
