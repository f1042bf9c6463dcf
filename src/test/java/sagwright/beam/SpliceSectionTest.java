package sagwright.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpliceSectionTest {
  private static final double RADIUS = 14.5;

  /** Worked numbers: reference/formulas.md, 4.6 (quadrature and closed form agree there). */
  @ParameterizedTest
  @CsvSource({
    "4, 64, 341.333333333333333",
    "10, 400, 13333.3333333333333",
    "12, 549.97349836695, 24594.094549946",
    "14.5, 660.51985541725, 34718.574900369"
  })
  void coreAgreesWithTheWorkedNumbers(double half, double area, double secondMoment) {
    SpliceSection section = new SpliceSection(half, RADIUS);
    assertEquals(area, section.coreAreaMm2(), 1e-13 * area);
    assertEquals(secondMoment, section.coreSecondMomentMm4(), 1e-13 * secondMoment);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 3, 10.2, 10.253, 10.26, 13, 14.4999, 14.5, 20})
  void coreAndSpliceMakeUpTheRound(double half) {
    SpliceSection section = new SpliceSection(half, RADIUS);
    assertEquals(section.roundAreaMm2(), section.coreAreaMm2() + section.spliceAreaMm2(), 1e-11);
    assertEquals(
        section.roundSecondMomentMm4(),
        section.coreSecondMomentMm4() + section.spliceSecondMomentMm4(),
        1e-9);
  }

  /** The definition, by strips across the plane of bending. */
  @ParameterizedTest
  @ValueSource(doubles = {2, 10, 10.5, 12, 14, 14.45})
  void coreAgreesWithStripsSummedUp(double half) {
    double corner = half * half * 2 <= RADIUS * RADIUS ? half : Math.sqrt(210.25 - half * half);
    double area = 0;
    double second = 0;
    // Strips up to the corner are as long as the core is wide; beyond it the round cuts them off.
    // y = R·sin t makes the rest smooth.
    area += 4 * half * corner;
    second += 4 * half * Math.pow(corner, 3) / 3;
    if (corner < half) {
      GaussIntegrator rule =
          new GaussIntegratorFactory()
              .legendre(40, Math.asin(corner / RADIUS), Math.asin(half / RADIUS));
      area += 4 * rule.integrate(t -> Math.pow(RADIUS * Math.cos(t), 2));
      second +=
          4
              * rule.integrate(
                  t -> Math.pow(RADIUS * Math.sin(t), 2) * Math.pow(RADIUS * Math.cos(t), 2));
    }
    SpliceSection section = new SpliceSection(half, RADIUS);
    assertEquals(area, section.coreAreaMm2(), 1e-12 * area);
    assertEquals(second, section.coreSecondMomentMm4(), 1e-12 * second);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 8, 10.4, 12, 14.3})
  void gainsAreDerivatives(double half) {
    double step = 1e-4;
    SpliceSection section = new SpliceSection(half, RADIUS);
    double byRadius =
        (new SpliceSection(half, RADIUS + step).coreSecondMomentMm4()
                - new SpliceSection(half, RADIUS - step).coreSecondMomentMm4())
            / (2 * step);
    double byHalf =
        (new SpliceSection(half + step, RADIUS).coreSecondMomentMm4()
                - new SpliceSection(half - step, RADIUS).coreSecondMomentMm4())
            / (2 * step);
    assertEquals(byRadius, section.coreSecondMomentByRadiusMm3(), 1e-4);
    assertEquals(byHalf, section.coreSecondMomentByHalfMm3(), 1e-4);
  }

  @Test
  void aThinSliverOfSpliceKeepsItsDigits() {
    // Segments of small angle a: 4 of area R²(a − sin a·cos a) → R²·(2a³/3)(1 − a²/5 …).
    double angle = 1e-4;
    SpliceSection section = new SpliceSection(RADIUS * Math.cos(angle), RADIUS);
    double area = 4 * RADIUS * RADIUS * 2 * Math.pow(angle, 3) / 3;
    assertEquals(area, section.spliceAreaMm2(), 1e-6 * area);
  }
}
