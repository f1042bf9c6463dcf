package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.beam.Flexibility;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluator;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.HandReadings;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;

class FrameComplianceTest {
  private static final double STEEL_MPA = 206_000;
  private static final double RATIO = 2.58;
  private static final SetUp MIDDLE = new SetUp(50, 1050, 550, 550, 0);
  private static final Instrument PLAIN = new Instrument(0.02, 0, 0.0005, 0, 0);
  private static final Estimate EXACT = new Estimate(STEEL_MPA, 0);
  private final Evaluator evaluator = new Evaluator(SpeciesTable.published());

  /** A bar of 30 mm, worked by hand: 1/k = L³/48EI + r·(10/9)·L/(4·A·E) + C. */
  @Test
  void findsTheFrameThatTheRunWasMadeWith() throws Exception {
    double second = Math.PI * Math.pow(30, 4) / 64;
    double area = Math.PI * 900 / 4;
    double bar = 1e9 / (48 * STEEL_MPA * second) + RATIO * 10 / 9 * 1000 / (4 * area * STEEL_MPA);
    BendTest test = test(bar + 0.0021, MIDDLE, PLAIN, 0);
    FrameCompliance frame = FrameCompliance.of(test, EXACT, evaluator);
    assertEquals(0.0021, frame.complianceMmPerN().value(), 1e-11);
    assertEquals(1 / (bar + 0.0021), frame.stiffnessNPerMm().value(), 1e-7);
  }

  /** The stem's spring takes its share; the frame carries the whole load. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.05, 2})
  void takesTheGaugesSpringIntoAccount(double springNPerMm) throws Exception {
    SetUp aside = new SetUp(50, 1050, 400, 700, 0);
    Taper bar = bar();
    double given =
        Flexibility.of(bar, aside).perMm(RATIO)
                / (STEEL_MPA + springNPerMm * Flexibility.atGauge(bar, aside).perMm(RATIO))
            + 0.0035;
    Instrument sprung = new Instrument(0.02, 0, 0.0005, 0, springNPerMm);
    FrameCompliance frame = FrameCompliance.of(test(given, aside, sprung, 0), EXACT, evaluator);
    assertEquals(0.0035, frame.complianceMmPerN().value(), 1e-11);
  }

  /** u² = (u_k/k²)² + (J·u_E/E²)² where nothing else is uncertain. */
  @Test
  void carriesTheLinesAndTheModulusUncertainty() throws Exception {
    double j = Flexibility.of(bar(), MIDDLE).perMm(RATIO);
    double given = j / STEEL_MPA + 0.002;
    Instrument scaled = new Instrument(0.02, 0.1, 0.0005, 0.05, 0);
    FrameCompliance frame =
        FrameCompliance.of(
            test(given, MIDDLE, scaled, 0), new Estimate(STEEL_MPA, 3000), evaluator);
    double line = frame.stiffnessNPerMm().standardUncertainty() * given * given;
    double modulus = j / (STEEL_MPA * STEEL_MPA) * 3000;
    assertTrue(line > 0);
    double u = Math.hypot(line, modulus);
    assertEquals(u, frame.complianceMmPerN().standardUncertainty(), 1e-6 * u);
  }

  /** One error common to all diameters: ∂C/∂d = (4·J_bending + 2r·J_shear)/(d·E). */
  @Test
  void carriesTheDiametersUncertainty() throws Exception {
    Flexibility j = Flexibility.of(bar(), MIDDLE);
    double given = j.perMm(RATIO) / STEEL_MPA + 0.002;
    double without =
        FrameCompliance.of(test(given, MIDDLE, PLAIN, 0), EXACT, evaluator)
            .complianceMmPerN()
            .standardUncertainty();
    double with =
        FrameCompliance.of(test(given, MIDDLE, PLAIN, 0.01), EXACT, evaluator)
            .complianceMmPerN()
            .standardUncertainty();
    double diameter = (4 * j.bendingPerMm() + 2 * RATIO * j.shearPerMm()) / 30 / STEEL_MPA * 0.01;
    assertEquals(Math.hypot(without, diameter), with, 1e-6 * with);
  }

  @Test
  void aBarSofterThanItsModulusSaysComesOutBelowZero() throws Exception {
    double j = Flexibility.of(bar(), MIDDLE).perMm(RATIO);
    FrameCompliance frame =
        FrameCompliance.of(
            test(j / STEEL_MPA, MIDDLE, PLAIN, 0), new Estimate(100_000, 0), evaluator);
    assertEquals(j / STEEL_MPA - j / 100_000, frame.complianceMmPerN().value(), 1e-11);
    assertTrue(frame.complianceMmPerN().value() < 0);
  }

  @Test
  void refusesABarOfTwoMaterials() {
    BendTest plain = test(0.005, MIDDLE, PLAIN, 0);
    Shaft s = plain.shaft();
    Shaft spliced =
        new Shaft(
            s.taper(),
            s.widthMeasured(),
            null,
            null,
            null,
            0,
            1,
            new Splice(700, 3, 1100, 15000, 0));
    BendTest test =
        new BendTest(spliced, plain.setUp(), plain.instrument(), plain.ratio(), plain.readings());
    assertThrows(IllegalArgumentException.class, () -> FrameCompliance.of(test, EXACT, evaluator));
  }

  private static Taper bar() {
    return Taper.round(List.of(Station.round(0, 30), Station.round(1100, 30)), 1100);
  }

  /** A run without noise in which load and gauge follow a given give per newton. */
  private static BendTest test(
      double givenMmPerN, SetUp setUp, Instrument instrument, double diameterUncertaintyMm) {
    double[] load = new double[11];
    double[] deflection = new double[11];
    for (int i = 0; i < load.length; i++) {
      load[i] = 5.0 * i;
      deflection[i] = load[i] * givenMmPerN;
    }
    Shaft shaft =
        new Shaft(
            bar(), new boolean[] {false, false}, null, null, null, diameterUncertaintyMm, 1, null);
    return new BendTest(
        shaft,
        new BenchSetUp(setUp, 0, 0.002, 0.001),
        instrument,
        new ShearRatio(RATIO, 0),
        new HandReadings(load, deflection));
  }
}
