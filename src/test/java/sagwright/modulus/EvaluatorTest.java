package sagwright.modulus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.beam.Flexibility;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.run.HandReadings;
import sagwright.run.PoorRunException;
import sagwright.run.Readings;
import sagwright.uncertainty.Contribution;
import sagwright.uncertainty.Warning;
import sagwright.wood.SpeciesTable;

/** The worked example of docs/contract.md, sections 3 and 4, and what surrounds it. */
class EvaluatorTest {
  private static final double EXAMPLE_STIFFNESS = 4.103408682270373;

  private final Evaluator evaluator = new Evaluator(SpeciesTable.published());

  private static Shaft exampleShaft(boolean secondWidthMeasured) {
    return new Shaft(
        new Taper(
            SectionShape.ELLIPSE,
            List.of(new Station(0, 12.50, 12.48), new Station(1490, 31, 31)),
            1490),
        new boolean[] {true, secondWidthMeasured},
        "European ash",
        405.0,
        11.2,
        0.02,
        0.5,
        null);
  }

  private static BenchSetUp exampleSetUp(double frame) {
    return new BenchSetUp(new SetUp(100, 1100, 600, 600, 0), 0.5, frame, 0);
  }

  private static Readings line(double stiffness, double greatestLoadN) {
    int n = 9;
    double[] loads = new double[n];
    double[] deflections = new double[n];
    for (int i = 0; i < n; i++) {
      loads[i] = greatestLoadN * i / (n - 1);
      deflections[i] = loads[i] / stiffness;
    }
    return new HandReadings(loads, deflections);
  }

  private static BendTest example(Readings readings) {
    return new BendTest(
        exampleShaft(false),
        exampleSetUp(0.0020),
        Instrument.ASSUMED,
        new ShearRatio(14, 0),
        readings);
  }

  @Test
  void theWorkedExampleOfTheContract() throws PoorRunException {
    Evaluation e = evaluator.evaluate(example(line(EXAMPLE_STIFFNESS, 20)));
    assertEquals(EXAMPLE_STIFFNESS, e.fit().stiffnessNPerMm(), 1e-11);
    assertEquals(12340.0, e.modulusMPa(), 1e-7);
    assertEquals(4.137363266973181, e.shaftStiffnessNPerMm(), 1e-11);
    assertEquals(690.2357209056094, e.densityKgM3(), 1e-10);
    assertEquals(12194.9, e.modulusAt12PercentMPa(), 0.05);
    assertEquals(43.32, contribution(e, "diameter"), 0.005);
    assertEquals(List.of(), e.warnings().stream().map(Warning::inWords).toList());
  }

  @Test
  void budgetNamesItsSourcesInOrder() throws PoorRunException {
    Evaluation e = evaluator.evaluate(example(line(EXAMPLE_STIFFNESS, 20)));
    assertEquals(
        List.of(
            "line",
            "loadScale",
            "gaugeScale",
            "diameter",
            "supportA",
            "supportB",
            "load",
            "gauge",
            "frame",
            "ratio"),
        e.budget().contributions().stream().map(Contribution::source).toList());
  }

  /** A core at one modulus with splice wood of the same: the budget of a shaft of one wood. */
  @Test
  void aSpliceOfTheSameWoodHasTheBudgetOfOneWood() throws PoorRunException {
    Shaft whole = exampleShaft(false);
    BenchSetUp setUp = new BenchSetUp(new SetUp(100, 1100, 620, 500, 0), 0.5, 0.002, 1e-4);
    Instrument instrument = new Instrument(0.02, 0.1, 0.005, 0.05, 0);
    ShearRatio ratio = new ShearRatio(14, 2);
    Evaluation one =
        evaluator.evaluate(
            new BendTest(whole, setUp, instrument, ratio, line(EXAMPLE_STIFFNESS, 20)));
    Shaft spliced =
        new Shaft(
            whole.taper(),
            whole.widthMeasured(),
            whole.species(),
            whole.massG(),
            whole.moisturePercent(),
            whole.diameterUncertaintyMm(),
            whole.diameterCommonShare(),
            new Splice(whole.taper().lengthMm(), 4, 1120, one.modulusMPa(), 0));
    Evaluation both =
        evaluator.evaluate(
            new BendTest(spliced, setUp, instrument, ratio, line(EXAMPLE_STIFFNESS, 20)));
    assertEquals(one.modulusMPa(), both.modulusMPa(), 1e-9 * one.modulusMPa());
    for (Contribution of : one.budget().contributions()) {
      double expected = of.standardUncertainty();
      assertEquals(expected, contribution(both, of.source()), 2e-9 * expected, of.source());
    }
  }

  /** Every contribution against a central difference through the whole model. */
  @Test
  void contributionsAreTheModelsOwnDifferences() throws PoorRunException {
    BenchSetUp setUp = new BenchSetUp(new SetUp(100, 1100, 620, 500, 20), 0.5, 0.002, 1e-4);
    Instrument instrument = new Instrument(0.02, 0.1, 0.005, 0.05, 0.03);
    Shaft shaft = exampleShaft(true);
    BendTest test =
        new BendTest(shaft, setUp, instrument, new ShearRatio(14, 2), line(EXAMPLE_STIFFNESS, 20));
    Evaluation e = evaluator.evaluate(test);
    double step = 1e-5;
    assertEquals(
        Math.abs(
                modulus(shaft, setUp, 14, EXAMPLE_STIFFNESS * (1 + step))
                    - modulus(shaft, setUp, 14, EXAMPLE_STIFFNESS * (1 - step)))
            / (2 * step)
            * 0.001,
        contribution(e, "loadScale"),
        1e-5);
    assertEquals(contribution(e, "loadScale") / 2, contribution(e, "gaugeScale"), 1e-9);
    assertEquals(
        Math.abs(
                modulus(shaft, setUp, 16, EXAMPLE_STIFFNESS)
                    - modulus(shaft, setUp, 12, EXAMPLE_STIFFNESS))
            / 2,
        contribution(e, "ratio"),
        1e-6);
    BenchSetUp soft = new BenchSetUp(setUp.positions(), 0.5, 0.002 + 1e-7, 0);
    BenchSetUp hard = new BenchSetUp(setUp.positions(), 0.5, 0.002 - 1e-7, 0);
    assertEquals(
        Math.abs(
                modulus(shaft, soft, 14, EXAMPLE_STIFFNESS)
                    - modulus(shaft, hard, 14, EXAMPLE_STIFFNESS))
            / 2e-7
            * 1e-4,
        contribution(e, "frame"),
        1e-4);
    assertEquals(diameterByDifferences(shaft, setUp), contribution(e, "diameter"), 1e-3);
    double combined = 0;
    for (Contribution c : e.budget().contributions()) {
      combined += c.standardUncertainty() * c.standardUncertainty();
    }
    assertEquals(Math.sqrt(combined), e.modulusStdUncertaintyMPa(), 1e-12);
  }

  private static double diameterByDifferences(Shaft shaft, BenchSetUp setUp) {
    double sum = 0;
    double squares = 0;
    double step = 1e-4;
    for (int i = 0; i < 4; i++) {
      double up = modulus(nudged(shaft, i, step), setUp, 14, EXAMPLE_STIFFNESS);
      double down = modulus(nudged(shaft, i, -step), setUp, 14, EXAMPLE_STIFFNESS);
      double slope = (up - down) / (2 * step);
      sum += slope;
      squares += slope * slope;
    }
    return 0.02 * Math.sqrt(0.5 * squares + 0.5 * sum * sum);
  }

  private static Shaft nudged(Shaft shaft, int reading, double by) {
    List<Station> stations = new ArrayList<>(shaft.taper().stations());
    Station s = stations.get(reading / 2);
    boolean width = reading % 2 == 1;
    stations.set(
        reading / 2,
        new Station(s.xMm(), s.depthMm() + (width ? 0 : by), s.widthMm() + (width ? by : 0)));
    return new Shaft(
        new Taper(SectionShape.ELLIPSE, stations, 1490),
        shaft.widthMeasured(),
        null,
        null,
        null,
        0.02,
        0.5,
        null);
  }

  /** The formula of docs/contract.md, section 2, written out once more; gauge spring 0.03. */
  private static double modulus(Shaft shaft, BenchSetUp setUp, double ratio, double stiffness) {
    SetUp p = setUp.positions();
    return Flexibility.of(shaft.taper(), p).perMm(ratio)
            / (1 / stiffness - setUp.frameComplianceMmPerN())
        - 0.03 * Flexibility.atGauge(shaft.taper(), p).perMm(ratio);
  }

  private static double contribution(Evaluation e, String source) {
    return e.budget().contributions().stream()
        .filter(c -> c.source().equals(source))
        .mapToDouble(Contribution::standardUncertainty)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void monteCarloAgreesWithTheBudgetAndRepeatsByItsSeed() throws PoorRunException {
    BendTest test = example(line(EXAMPLE_STIFFNESS, 20));
    Evaluation e = evaluator.evaluate(test);
    MonteCarlo first = MonteCarlo.of(test, e.fit(), 100_000, 11);
    MonteCarlo again = MonteCarlo.of(test, e.fit(), 100_000, 11);
    MonteCarlo other = MonteCarlo.of(test, e.fit(), 100_000, 12);
    assertEquals(first, again);
    assertTrue(first.modulusMPa() != other.modulusMPa());
    assertEquals(e.modulusMPa(), first.modulusMPa(), 5 * e.modulusStdUncertaintyMPa() / 316);
    assertEquals(1, first.modulusStdUncertaintyMPa() / e.modulusStdUncertaintyMPa(), 0.015);
    double half95 = (first.high95MPa() - first.low95MPa()) / 2;
    assertEquals(1.96, half95 / first.modulusStdUncertaintyMPa(), 0.02);
  }

  @Test
  void aFrameSofterThanWhatWasMeasuredGivesNoAnswer() {
    BendTest test =
        new BendTest(
            exampleShaft(false),
            exampleSetUp(0.3),
            Instrument.ASSUMED,
            new ShearRatio(14, 0),
            line(EXAMPLE_STIFFNESS, 20));
    PoorRunException poor = assertThrows(PoorRunException.class, () -> evaluator.evaluate(test));
    assertTrue(poor.getMessage().contains("frame"), poor.getMessage());
  }

  @Test
  void aShaftThatWouldTipOffIsWarnedOf() throws PoorRunException {
    BendTest test =
        new BendTest(
            exampleShaft(false),
            new BenchSetUp(new SetUp(100, 700, 400, 400, 0), 0.5, 0, 0),
            Instrument.ASSUMED,
            new ShearRatio(14, 0),
            line(10, 20));
    Evaluation e = evaluator.evaluate(test);
    assertTrue(e.warnings().stream().anyMatch(w -> w instanceof ShaftWarning.TipsOff));
  }

  @Test
  void withoutMassAndMoistureThereIsNoDensityAndNoModulusAtTwelvePercent() throws PoorRunException {
    Shaft bare =
        new Shaft(
            exampleShaft(false).taper(),
            new boolean[] {false, false},
            null,
            null,
            null,
            0.02,
            0.5,
            null);
    Evaluation e =
        evaluator.evaluate(
            new BendTest(
                bare,
                exampleSetUp(0.002),
                Instrument.ASSUMED,
                new ShearRatio(14, 0),
                line(EXAMPLE_STIFFNESS, 20)));
    assertNull(e.densityKgM3());
    assertNull(e.modulusAt12PercentMPa());
  }
}
