package sagwright.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.beam.SectionShape;
import sagwright.beam.Station;
import sagwright.beam.Taper;

class CutFinderTest {
  private static Taper round(double length, double... xAndDiameter) {
    Station[] knots = new Station[xAndDiameter.length / 2];
    for (int i = 0; i < knots.length; i++) {
      knots[i] = Station.round(xAndDiameter[2 * i], xAndDiameter[2 * i + 1]);
    }
    return Taper.round(List.of(knots), length);
  }

  /** docs/contract.md, sections 3 and 5. */
  @Test
  void theContractsShaftHasItsSpare() {
    Taper blank =
        new Taper(
            SectionShape.ELLIPSE,
            List.of(new Station(0, 12.50, 12.48), new Station(1490, 31, 31)),
            1490);
    Cut cut = new CutFinder(blank, round(1473, 0, 9.5, 1473, 29)).at(8);
    assertEquals(1.88813422819799, cut.leastSpareMm(), 2e-11);
    assertEquals(1473, cut.leastSpareAtMm());
    assertTrue(cut.fits());
  }

  @Test
  void parallelTapersLeaveEqualSpareAndTheTipIsNamed() {
    Cut cut =
        new CutFinder(round(1500, 0, 12, 1500, 32), round(1400, 0, 10, 1400, 10 + 56.0 / 3)).at(0);
    assertEquals(2, cut.leastSpareMm(), 1e-12);
    assertEquals(0, cut.leastSpareAtMm());
  }

  @Test
  void ofEqualCutsTheSmallestIsTaken() {
    Cut cut = new CutFinder(round(1500, 0, 30, 1500, 30), round(1400, 0, 10, 1400, 29)).best();
    assertEquals(0, cut.fromMm());
    assertEquals(1, cut.leastSpareMm(), 1e-13);
    assertEquals(1400, cut.leastSpareAtMm());
  }

  /** Spare at the tip rises with the cut by 0.01 a mm, at the waist it falls by 0.02. */
  @Test
  void theBestCutIsWhereTwoSparesMeet() {
    Taper blank = round(1500, 0, 12, 600, 18, 1500, 36);
    Taper finished = round(1400, 0, 10, 700, 19, 1400, 20);
    // Tip: 12 + 0.01c − 10; at 700: 18 + 0.02·(100 + c) − 19 = 1 + 0.02c; both rise: last cut.
    assertEquals(100, new CutFinder(blank, finished).best().fromMm());
    Taper falling = round(1500, 0, 12, 700, 26, 1500, 18);
    Taper straight = round(1400, 0, 10, 1400, 17);
    // Tip: 2 + 0.02c; butt: 18 + 0.01·(100 − c) − 17 = 2 − 0.01c: they meet at c = 0.
    assertEquals(0, new CutFinder(falling, straight).best().fromMm());
    Taper thinner = round(1400, 0, 11, 1400, 17);
    // Tip: 1 + 0.02c; butt: 2 − 0.01c: at c = 100/3, spare 5/3.
    Cut met = new CutFinder(falling, thinner).best();
    assertEquals(100.0 / 3, met.fromMm(), 1e-10);
    assertEquals(5.0 / 3, met.leastSpareMm(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-5e-10, 0, 5e-10})
  void aRoundThatTouchesTheBarkFits(double over) {
    Cut cut =
        new CutFinder(round(1400, 0, 10 - over, 1400, 29), round(1400, 0, 10, 1400, 29)).at(0);
    assertTrue(cut.fits());
  }

  @Test
  void aHairTooThickDoesNotFit() {
    Cut cut =
        new CutFinder(round(1400, 0, 10, 1400, 29), round(1400, 0, 10 + 2e-9, 1400, 29)).at(0);
    assertFalse(cut.fits());
    assertEquals(-2e-9, cut.leastSpareMm(), 1e-14);
    assertEquals(0, cut.leastSpareAtMm());
  }

  @Test
  void aFinishLongerThanTheBlankIsAnAnswer() {
    CutFinder finder = new CutFinder(round(1300, 0, 20, 1300, 40), round(1400, 0, 10, 1400, 29));
    Cut cut = finder.best();
    assertEquals(0, cut.fromMm());
    assertFalse(cut.fits());
    assertEquals(-29, cut.leastSpareMm());
    assertEquals(1400, cut.leastSpareAtMm());
    assertTrue(finder.fitting().isEmpty());
  }

  @Test
  void aCutThatPushesTheButtOffTheBlankDoesNotFit() {
    Cut cut = new CutFinder(round(1400, 0, 20, 1400, 40), round(1400, 0, 10, 1400, 29)).at(0.5);
    assertEquals(-29, cut.leastSpareMm());
  }

  @Test
  void roundingAtTheButtEndIsNoOverhang() {
    // 8.1 + 1473.3 is a bit above 1481.4 in doubles, or below: either way the butt ends lie
    // together.
    Cut cut =
        new CutFinder(round(1481.4, 0, 20, 1481.4, 40), round(1473.3, 0, 10, 1473.3, 29)).at(8.1);
    assertTrue(cut.fits());
    assertEquals(
        8.1,
        new CutFinder(round(1481.4, 0, 12, 1481.4, 40), round(1473.3, 0, 10, 1473.3, 29))
            .best()
            .fromMm(),
        1e-9);
  }

  @Test
  void anOvalIsAsThickAsItsLesserAxisEvenWhereTheAxesCross() {
    Taper blank =
        new Taper(
            SectionShape.ELLIPSE, List.of(new Station(0, 12, 16), new Station(1400, 34, 30)), 1400);
    // Axes cross at 700 with 23; the round is 22.5 there and thin at the ends.
    Cut cut = new CutFinder(blank, round(1400, 0, 9, 700, 22.5, 1400, 27)).at(0);
    assertEquals(0.5, cut.leastSpareMm(), 1e-12);
    assertEquals(700, cut.leastSpareAtMm(), 1e-9);
  }

  /**
   * Invented outlines; every cut on a fine grid is worse, and the best is not better than it says.
   */
  @RepeatedTest(40)
  void noCutOnAFineGridIsBetter(RepetitionInfo repetition) {
    Random random = new Random(7000 + repetition.getCurrentRepetition());
    Taper blank = bumpy(random, 1500, 3 + random.nextInt(4), 2);
    Taper finished = bumpy(random, 1440, 2 + random.nextInt(4), 0);
    CutFinder finder = new CutFinder(blank, finished);
    Cut best = finder.best();
    double bestOnGrid = -Double.MAX_VALUE;
    List<double[]> fitting = finder.fitting();
    int fits = 0;
    for (int i = 0; i <= 6000; i++) {
      Cut cut = finder.at(i * 0.01);
      bestOnGrid = Math.max(bestOnGrid, cut.leastSpareMm());
      double there = cut.fromMm();
      boolean listed =
          fitting.stream().anyMatch(range -> range[0] - 1e-9 <= there && there <= range[1] + 1e-9);
      assertEquals(cut.fits(), listed, "cut " + there);
      fits += cut.fits() ? 1 : 0;
    }
    assertTrue(best.leastSpareMm() >= bestOnGrid - 1e-11);
    assertTrue(best.leastSpareMm() <= bestOnGrid + 0.01 * 0.2, "no steeper than the outlines");
    assertEquals(best.fits(), fits > 0 || best.leastSpareMm() >= -1e-9);
  }

  private static Taper bumpy(Random random, double length, int knots, double thicker) {
    double[] xAndDiameter = new double[2 * knots];
    for (int i = 0; i < knots; i++) {
      double x =
          i == knots - 1
              ? length
              : length * (i + 0.3 * random.nextDouble() * Math.min(i, 1)) / (knots - 1);
      xAndDiameter[2 * i] = x;
      xAndDiameter[2 * i + 1] = 10 + 18 * x / length + thicker + 3 * random.nextDouble();
    }
    return round(length, xAndDiameter);
  }
}
