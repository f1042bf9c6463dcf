package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

class ReferenceCueTest {
  private static final SetUp MIDDLE = new SetUp(100, 1100, 600, 600, 0);
  private static final SetUp BUTT = new SetUp(700, 1450, 1075, 1075, 0);
  private static final Taper CUE =
      Taper.round(
          List.of(Station.round(0, 9.3), Station.round(760, 19), Station.round(1470, 28.6)), 1470);
  private static final Splice EBONY = new Splice(1020, 3.5, 1120, 15500, 5);
  private static final double MODULUS_MPA = 12600;
  private static final double RATIO = 14;
  private static final ModulusAlong KNOWN = ModulusAlong.constant(new Estimate(MODULUS_MPA, 60));

  private static ReferenceCue cue(Splice splice, ReferenceCue.Measured measured) {
    return new ReferenceCue("25-020", CUE, splice, KNOWN, RATIO, measured);
  }

  /**
   * By strips and small steps alone: the section cut into slices, the integral of docs/contract.md,
   * section 2, by the midpoint rule. Shares no line with the program.
   */
  private static double byBruteForce(Splice splice, SetUp at, double modulusMPa) {
    double span = at.supportBMm() - at.supportAMm();
    int steps = 30_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double x = at.supportAMm() + (i + 0.5) * span / steps;
      double left = (at.supportBMm() - at.loadMm()) / span; // load and gauge stand together
      boolean before = x < at.loadMm();
      double moment = before ? left * (x - at.supportAMm()) : (1 - left) * (at.supportBMm() - x);
      double shear = before ? left : 1 - left;
      double radius =
          (x < 760 ? 9.3 + (19 - 9.3) * x / 760 : 19 + (28.6 - 19) * (x - 760) / 710) / 2;
      double area = Math.PI * radius * radius;
      double bending = modulusMPa * Math.PI * Math.pow(radius, 4) / 4;
      if (splice != null && x > splice.fromMm()) {
        bending = splicedBending(splice, x, radius, modulusMPa);
      }
      sum +=
          (moment * moment / bending + 10.0 / 9 * RATIO * shear * shear / (modulusMPa * area))
              * span
              / steps;
    }
    return 1 / sum;
  }

  private static double splicedBending(Splice splice, double x, double radius, double modulusMPa) {
    double radiusAtPoints = (19 + (28.6 - 19) * (splice.fromMm() - 760) / 710) / 2;
    double half =
        radiusAtPoints
            + (splice.coreHalfAtButtMm() - radiusAtPoints)
                * (x - splice.fromMm())
                / (1470 - splice.fromMm());
    int slices = 200;
    double bending = 0;
    for (int j = 0; j < slices; j++) {
      double y = (j + 0.5) / slices * radius;
      double chord = Math.sqrt(radius * radius - y * y);
      double core = y < half ? Math.min(half, chord) : 0;
      double one = modulusMPa * core + splice.modulusMPa() * (chord - core);
      bending += 4 * one * y * y * radius / slices;
    }
    return bending;
  }

  @Test
  void anotherSetUpIsReckonedWithItsOwnTaperAndSplice() {
    for (Splice splice : new Splice[] {null, EBONY}) {
      for (SetUp at : AskPlaces.AT_FIRST.all()) {
        double expected = byBruteForce(splice, at, MODULUS_MPA);
        double found = cue(splice, null).stiffnessNPerMm(at).value();
        assertEquals(expected, found, 2e-4 * expected, at + " " + splice);
      }
    }
  }

  @Test
  void whereItWasMeasuredItsStiffnessIsWhatWasMeasured() {
    Estimate shown = new Estimate(2.31, 0.004);
    ReferenceCue cue = cue(EBONY, new ReferenceCue.Measured(MIDDLE.turnedBy(90), shown));
    assertEquals(shown, cue.stiffnessNPerMm(MIDDLE));
    assertTrue(cue.isMeasuredAt(MIDDLE));
    assertFalse(cue.isMeasuredAt(BUTT));
  }

  /** The modulus of its wood counts in full without a splice: dk/k = dE/E at a fixed r. */
  @Test
  void whatIsReckonedIsNoSurerThanItsWood() {
    Estimate plain = cue(null, null).stiffnessNPerMm(BUTT);
    assertEquals(60 / MODULUS_MPA, plain.standardUncertainty() / plain.value(), 1e-9);
    // with ebony in it: each of the two woods by a finite change of its modulus
    Estimate spliced = cue(EBONY, null).stiffnessNPerMm(BUTT);
    double byWood =
        byBruteForce(EBONY, BUTT, MODULUS_MPA + 60) - byBruteForce(EBONY, BUTT, MODULUS_MPA);
    Splice stiffer = new Splice(1020, 3.5, 1120, 15500 * 1.05, 5);
    double byEbony =
        byBruteForce(stiffer, BUTT, MODULUS_MPA) - byBruteForce(EBONY, BUTT, MODULUS_MPA);
    double expected = Math.hypot(byWood, byEbony);
    assertEquals(expected, spliced.standardUncertainty(), 0.02 * expected);
  }

  @Test
  void aSetUpPastItsButtCannotLieOnIt() {
    assertTrue(cue(null, null).canLieOn(BUTT));
    assertFalse(cue(null, null).canLieOn(new SetUp(700, 1470.1, 1075, 1075, 0)));
  }
}
