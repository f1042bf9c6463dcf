package sagwright.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CurveStressAndBandTest {
  private static Taper linear(double fromMm, double toMm, double lengthMm) {
    return Taper.round(List.of(Station.round(0, fromMm), Station.round(lengthMm, toMm)), lengthMm);
  }

  /** Uniform beam, centre load: slope over the support P·L²/(16EI), deflection P·L³/(48EI). */
  @Test
  void overhangsFollowTheTangentsAtTheSupports() {
    ElasticCurve curve =
        ElasticCurve.of(linear(12, 12, 1200), new SetUp(100, 1100, 600, 600, 0), 0);
    assertEquals(1, curve.shapeAt(600), 1e-12);
    assertEquals(0, curve.shapeAt(100), 1e-12);
    assertEquals(-100 * 3.0 / 1000, curve.shapeAt(0), 1e-12);
    assertEquals(-100 * 3.0 / 1000, curve.shapeAt(1200), 1e-12);
  }

  /** On a taper the overhang goes on with the slope that the bent span has just inside. */
  @Test
  void curveIsSmoothOverTheSupports() {
    Taper taper = linear(10, 30, 1500);
    SetUp setUp = new SetUp(100, 1200, 500, 600, 0);
    ElasticCurve bendingOnly = ElasticCurve.of(taper, setUp, 0);
    double inside = bendingOnly.shapeAt(100.01) / 0.01;
    double outside = -bendingOnly.shapeAt(99.99) / 0.01;
    assertEquals(outside, inside, 1e-4 * Math.abs(outside));
    inside = bendingOnly.shapeAt(1199.99) / 0.01;
    outside = -bendingOnly.shapeAt(1200.01) / 0.01;
    assertEquals(outside, inside, 1e-4 * Math.abs(outside));
  }

  /**
   * 9.5 → 29 over 1400, load at 700: stress 32M/(πd³) peaks at x = dA/(2s), where d = 14.25
   * (derived in formulas.md 4.4 of the reference folder).
   */
  @Test
  void stressPeaksWhereTheTaperIsOneAndAHalfTimesItsThinEnd() {
    PeakStress peak = PeakStress.of(linear(9.5, 29, 1400), new SetUp(0, 1400, 700, 700, 0));
    assertEquals(0.60022288624387, peak.mpaPerN(), 1e-13);
    assertEquals(341.025641026, peak.xMm(), 1e-3);
  }

  @Test
  void uniformRoundAndSquareStress() {
    PeakStress round = PeakStress.of(linear(12, 12, 1000), new SetUp(0, 1000, 500, 500, 37));
    assertEquals(32 * 250 / (Math.PI * 12 * 12 * 12), round.mpaPerN(), 1e-12);
    Taper square =
        new Taper(
            SectionShape.RECTANGLE, List.of(Station.round(0, 20), Station.round(1000, 20)), 1000);
    assertEquals(
        250 * 6.0 / 8000, PeakStress.of(square, new SetUp(0, 1000, 500, 500, 0)).mpaPerN(), 1e-13);
    assertEquals(
        250 * 6.0 / 8000 * Math.sqrt(2),
        PeakStress.of(square, new SetUp(0, 1000, 500, 500, 45)).mpaPerN(),
        1e-13);
  }

  /** Uniform beam, centre load: M² over half the span gives a share (2x/L)³/2. */
  @Test
  void listeningBandOfAUniformBeam() {
    ListeningBand band =
        ListeningBand.of(linear(12, 12, 1200), new SetUp(100, 1100, 600, 600, 0), 0);
    assertEquals(0.5, band.shareBelow(600), 1e-12);
    assertEquals(0.5 * 0.125, band.shareBelow(350), 1e-12);
    assertEquals(1 - 2 * 0.5 * 0.125, band.shareBetween(350, 850), 1e-12);
    double[] strokes = band.strokesMm(100);
    assertEquals(100, strokes.length);
    assertTrue(strokes[0] > 200 && strokes[99] < 1000);
    int middle = 0;
    for (double s : strokes) {
      middle += s > 350 && s < 850 ? 1 : 0;
    }
    assertEquals(88, middle, 1);
  }

  /** Cone frustum: V = πL/12·(d0²+d0d1+d1²), 311.790934504 g at 670 kg/m³. */
  @Test
  void volumeAndCentreOfMassOfAConeFrustum() {
    Taper cue = linear(9.5, 29, 1473);
    assertEquals(311.790934504, cue.volumeMm3() * 670e-6, 1e-8);
    assertEquals(507.40226849, 1473 - cue.centreOfMassMm(), 1e-7);
  }
}
