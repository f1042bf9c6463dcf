package sagwright.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SplicedFlexibilityTest {
  private static final double RATIO = 14;
  private static final double MODULUS = 12340;
  private static final SetUp MIDDLE = new SetUp(100, 1100, 600, 600, 0);
  private static final SetUp BUTT = new SetUp(700, 1450, 1075, 1000, 0);

  /** An oval blank: docs/contract.md, section 3. */
  private static final Taper OVAL =
      new Taper(
          SectionShape.ELLIPSE,
          List.of(new Station(0, 12.50, 12.48), new Station(1490, 31, 31)),
          1490);

  private static final Taper ROUND =
      Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473);

  private static final Splice SPLICE = new Splice(1030, 4, 1120, 15500, 0);

  @Test
  void aShaftOfOneWoodBendsAsItsFlexibilitySays() {
    SetUp turned = MIDDLE.turnedBy(30);
    double expected = Flexibility.of(OVAL, turned).perMm(RATIO) / MODULUS;
    SplicedFlexibility flexibility = SplicedFlexibility.of(SplicedTaper.ofOneWood(OVAL), turned);
    assertEquals(expected, flexibility.mmPerN(MODULUS, RATIO), 1e-14 * expected);
  }

  /** reference/formulas.md, 4.2: closed form of the linear round taper, bending. */
  @Test
  void aLinearTaperAgreesWithTheClosedForm() {
    Taper taper = Taper.round(List.of(Station.round(0, 10), Station.round(1000, 20)), 1000);
    SetUp setUp = new SetUp(0, 1000, 400, 650, 0);
    SplicedFlexibility flexibility = SplicedFlexibility.of(SplicedTaper.ofOneWood(taper), setUp);
    assertEquals(0.623571521388992, flexibility.mmPerN(12000, 14), 1e-13);
  }

  @Test
  void aSpliceOfTheSameWoodChangesNothing() {
    Splice same = new Splice(1030, 4, 1120, MODULUS, 0);
    double plain = Flexibility.of(ROUND, BUTT).perMm(RATIO) / MODULUS;
    SplicedFlexibility spliced = SplicedFlexibility.of(new SplicedTaper(ROUND, same), BUTT);
    assertEquals(plain, spliced.mmPerN(MODULUS, RATIO), 1e-14 * plain);
  }

  /** docs/contract.md, section 5: both stiffnesses of its example. */
  @Test
  void theContractsSplicedShaftHasItsStiffnesses() {
    SplicedTaper shaft = new SplicedTaper(ROUND, SPLICE);
    SetUp butt = new SetUp(700, 1450, 1075, 1075, 0);
    assertEquals(
        2.295855986282626, 1 / SplicedFlexibility.of(shaft, MIDDLE).mmPerN(MODULUS, RATIO), 1e-14);
    assertEquals(
        21.52922219672368, 1 / SplicedFlexibility.of(shaft, butt).mmPerN(MODULUS, RATIO), 1e-13);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 2, 9, 12.5, 14.49, 14.5})
  void loadAndGaugeMayChangePlaces(double half) {
    SplicedTaper shaft = new SplicedTaper(ROUND, new Splice(1030, half, 1120, 15500, 0));
    SetUp swapped = new SetUp(700, 1450, 1000, 1075, 0);
    double one = SplicedFlexibility.of(shaft, BUTT).mmPerN(MODULUS, RATIO);
    double other = SplicedFlexibility.of(shaft, swapped).mmPerN(MODULUS, RATIO);
    assertEquals(one, other, 1e-14 * one);
  }

  /** Every kind of butt: growing, waisted, core to the round again, no core left at all. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 4, 10, 13.9, 14.5})
  void anotherIntegratorAgrees(double half) {
    Taper waisted =
        Taper.round(
            List.of(
                Station.round(0, 9.5),
                Station.round(1100, 24),
                Station.round(1200, 21),
                Station.round(1300, 30),
                Station.round(1473, 29)),
            1473);
    SplicedTaper shaft = new SplicedTaper(waisted, new Splice(1030, half, 1120, 15500, 0));
    double expected = 0;
    double[] places = {700, 1000, 1030, 1075, 1100, 1200, 1300, 1450};
    for (int i = 0; i + 1 < places.length; i++) {
      expected += hipparchus(shaft, places[i], places[i + 1]);
    }
    double ours = SplicedFlexibility.of(shaft, BUTT).mmPerN(MODULUS, RATIO);
    assertEquals(expected, ours, 1e-9 * expected);
  }

  /** Blind to the places where the core touches the round: it only cuts finer and finer. */
  private static double hipparchus(SplicedTaper shaft, double from, double to) {
    return new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-13, 1, 60)
        .integrate(
            1_000_000,
            x -> {
              WoodSection section = shaft.sectionAt(x, 0);
              double stiffness =
                  MODULUS * section.coreSecondMomentMm4() + 15500 * section.spliceSecondMomentMm4();
              double load = x <= 1075 ? (1450 - 1075) * (x - 700) : (1075 - 700) * (1450 - x);
              double gauge = x <= 1000 ? (1450 - 1000) * (x - 700) : (1000 - 700) * (1450 - x);
              double shearLoad = x <= 1075 ? 1450 - 1075 : -(1075 - 700);
              double shearGauge = x <= 1000 ? 1450 - 1000 : -(1000 - 700);
              return load * gauge / (750.0 * 750.0) / stiffness
                  + 10.0
                      / 9
                      * RATIO
                      * shearLoad
                      * shearGauge
                      / (750.0 * 750.0)
                      / (MODULUS * section.areaMm2());
            },
            from,
            to);
  }

  @Test
  void aSplicedOvalIsRoundBehindTheSplicesStartAndOvalBeforeIt() {
    Taper oval =
        new Taper(
            SectionShape.ELLIPSE, List.of(new Station(0, 13, 12), new Station(1490, 32, 30)), 1490);
    SplicedTaper shaft = new SplicedTaper(oval, SPLICE);
    assertEquals(oval.secondMomentAt(500, 20), shaft.sectionAt(500, 20).coreSecondMomentMm4());
    WoodSection butt = shaft.sectionAt(1490, 20);
    assertEquals(
        Math.PI * Math.pow(15.5, 4) / 4,
        butt.coreSecondMomentMm4() + butt.spliceSecondMomentMm4(),
        1e-9);
    assertEquals(4.0 / 3 * Math.pow(4, 4), butt.coreSecondMomentMm4(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {4, 10.5, 14.2})
  void derivativesAreThoseOfTheDeflection(double half) {
    SplicedTaper shaft = new SplicedTaper(ROUND, new Splice(1030, half, 1120, 15500, 0));
    SplicedFlexibility flexibility = SplicedFlexibility.of(shaft, BUTT);
    double byCore = Arrays.stream(flexibility.byCoreModulus(x -> MODULUS, RATIO)).sum();
    double step = 5;
    assertEquals(
        (flexibility.mmPerN(MODULUS + step, RATIO) - flexibility.mmPerN(MODULUS - step, RATIO))
            / (2 * step),
        byCore,
        1e-6 * Math.abs(byCore));
    double bySplice = flexibility.bySpliceModulus(x -> MODULUS);
    assertEquals(
        (withSpliceModulus(half, 15505) - withSpliceModulus(half, 15495)) / 10,
        bySplice,
        1e-6 * Math.abs(bySplice));
    double byDiameter = flexibility.byDiameter(x -> MODULUS, RATIO);
    assertEquals(
        (thicker(0.001, half) - thicker(-0.001, half)) / 0.002,
        byDiameter,
        1e-6 * Math.abs(byDiameter));
  }

  private static double withSpliceModulus(double half, double modulus) {
    SplicedTaper shaft = new SplicedTaper(ROUND, new Splice(1030, half, 1120, modulus, 0));
    return SplicedFlexibility.of(shaft, BUTT).mmPerN(MODULUS, RATIO);
  }

  private static double thicker(double mm, double half) {
    Taper taper =
        Taper.round(List.of(Station.round(0, 9.5 + mm), Station.round(1473, 29 + mm)), 1473);
    SplicedTaper shaft = new SplicedTaper(taper, new Splice(1030, half, 1120, 15500, 0));
    return SplicedFlexibility.of(shaft, BUTT).mmPerN(MODULUS, RATIO);
  }

  @ParameterizedTest
  @ValueSource(doubles = {10, 900, 12340, 210000})
  void theModulusThatShowsAStiffnessIsFoundAgain(double modulus) {
    SplicedFlexibility flexibility = SplicedFlexibility.of(new SplicedTaper(ROUND, SPLICE), BUTT);
    double shown = flexibility.mmPerN(modulus, RATIO);
    SplicedModulus solved = flexibility.modulusFor(shown, RATIO);
    assertEquals(modulus, solved.modulusMPa(), 1e-12 * modulus);
    double step = 1e-4 * shown;
    double byShown =
        (flexibility.modulusFor(shown + step, RATIO).modulusMPa()
                - flexibility.modulusFor(shown - step, RATIO).modulusMPa())
            / (2 * step);
    assertEquals(byShown, solved.byMmPerN(), 1e-6 * Math.abs(byShown));
    assertTrue(solved.bySpliceModulus() < 0, "a stiffer splice leaves less to the shaft wood");
  }

  @Test
  void aShaftThatBendsAgainstItsLoadHasNoModulus() {
    SplicedFlexibility flexibility = SplicedFlexibility.of(new SplicedTaper(ROUND, SPLICE), BUTT);
    assertThrows(IllegalArgumentException.class, () -> flexibility.modulusFor(-0.1, RATIO));
  }

  @Test
  void aModulusThatStepsIsIntegratedFromStepToStep() {
    SplicedTaper shaft = new SplicedTaper(ROUND, SPLICE);
    double step = 1203.4;
    double stepped =
        SplicedFlexibility.of(shaft, BUTT, step).mmPerN(x -> x < step ? 11000 : 14000, RATIO);
    double front = SplicedFlexibility.of(shaft, BUTT, step).mmPerN(11000, RATIO);
    double back = SplicedFlexibility.of(shaft, BUTT, step).mmPerN(14000, RATIO);
    assertTrue(back < stepped && stepped < front);
    // With many more borders at which nothing happens the rule is finer; the answer is the same.
    double[] borders = new double[76];
    Arrays.setAll(borders, i -> 700 + 10 * i);
    borders[50] = step;
    double finer =
        SplicedFlexibility.of(shaft, BUTT, borders).mmPerN(x -> x < step ? 11000 : 14000, RATIO);
    assertEquals(finer, stepped, 1e-13 * finer);
  }
}
