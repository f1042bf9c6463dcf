package sagwright.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import sagwright.beam.FlexibilityNodes;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluator;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.HandReadings;
import sagwright.run.PoorRunException;
import sagwright.wood.SpeciesTable;

/**
 * An invented shaft with a known modulus along it, tested on an invented bench whose errors are
 * drawn as its sheets state them: calipers (own and common), scales, positions, readings. The
 * public fields are what a test changes.
 */
final class InventedShaft {
  static final double LENGTH_MM = 1490;
  static final double MODULUS_MPA = 12000;

  /** Eight set-ups that between them listen to the whole shaft, long and short. */
  static final List<SetUp> EIGHT =
      List.of(
          middle(100, 1100),
          middle(50, 1450),
          middle(50, 750),
          middle(750, 1450),
          middle(400, 1100),
          middle(50, 450),
          middle(500, 950),
          middle(1000, 1450));

  DoubleUnaryOperator modulusMPa = x -> MODULUS_MPA;
  double[] breaksMm = {};
  double ratio = 14;
  boolean errors = true;
  double springNPerMm;
  int stations = 8;

  /** Width over depth. */
  double ovalMm;

  /** The modulus is so much greater when turned to {@link #grainDegrees}, and less across it. */
  double grainShare;

  double grainDegrees;
  double statedPositionMm = 0.5;
  double statedDiameterMm = 0.02;
  Instrument stated = new Instrument(0.02, 0.1, 0.005, 0.05, 0);
  double wrongSupportMm;
  int wrongRun;

  private final SplittableRandom random;

  InventedShaft(long seed) {
    random = new SplittableRandom(seed);
  }

  static SetUp middle(double supportAMm, double supportBMm) {
    double at = (supportAMm + supportBMm) / 2;
    return new SetUp(supportAMm, supportBMm, at, at, 0);
  }

  /** A third of the length, 0 to 2 from the tip on, softer by a share. */
  InventedShaft softThird(int third, double share) {
    double from = third * LENGTH_MM / 3;
    double to = (third + 1) * LENGTH_MM / 3;
    modulusMPa = x -> MODULUS_MPA * (x >= from && x < to ? 1 - share : 1);
    breaksMm = new double[] {LENGTH_MM / 3, 2 * LENGTH_MM / 3};
    return this;
  }

  /** Rising from tip to butt by a share of the mean. */
  InventedShaft rising(double share) {
    modulusMPa = x -> MODULUS_MPA * (1 + share * (x / LENGTH_MM - 0.5));
    return this;
  }

  InventedShaft withoutErrors() {
    errors = false;
    return this;
  }

  SurveyAnswer survey(List<SetUp> setUps) throws PoorRunException {
    try {
      return new SurveySolver().solve(SurveyProblem.of(test(setUps)));
    } catch (DifferentShaftsException e) {
      throw new AssertionError(e);
    }
  }

  List<SurveyRun> test(List<SetUp> setUps) throws PoorRunException {
    Evaluator evaluator = new Evaluator(SpeciesTable.published());
    Shaft shaft = stated();
    Taper truth = truth(shaft);
    double loadScale = 1 + error(0.001);
    double gaugeScale = 1 + error(0.0005);
    List<SurveyRun> runs = new ArrayList<>();
    for (int i = 0; i < setUps.size(); i++) {
      SetUp stated = setUps.get(i);
      double wrong = i == wrongRun ? wrongSupportMm : 0;
      SetUp real =
          new SetUp(
              stated.supportAMm() + error(0.5) + wrong,
              stated.supportBMm() + error(0.5),
              stated.loadMm() + error(0.5),
              stated.gaugeMm() + error(0.5),
              stated.turnDegrees());
      BendTest test =
          new BendTest(
              shaft,
              new BenchSetUp(stated, statedPositionMm, 0.002, 0),
              instrument(),
              new ShearRatio(14, 0),
              readings(1 / (given(truth, real) + 0.002), loadScale, gaugeScale));
      runs.add(new SurveyRun(test, evaluator.evaluate(test)));
    }
    return runs;
  }

  private Instrument instrument() {
    return new Instrument(
        stated.loadUncertaintyN(),
        stated.loadScaleUncertaintyPercent(),
        stated.gaugeUncertaintyMm(),
        stated.gaugeScaleUncertaintyPercent(),
        springNPerMm);
  }

  private double error(double standardUncertainty) {
    return errors ? standardUncertainty * gaussian() : 0;
  }

  private double gaussian() {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private Shaft stated() {
    Station[] at = new Station[stations];
    for (int i = 0; i < stations; i++) {
      double x = LENGTH_MM * i / (stations - 1);
      double depth = 12.5 + (31 - 12.5) * x / LENGTH_MM;
      at[i] = new Station(x, depth, depth + ovalMm + 0.05 * (i % 3 - 1));
    }
    boolean[] measured = new boolean[stations];
    Arrays.fill(measured, true);
    Taper taper = new Taper(SectionShape.ELLIPSE, List.of(at), LENGTH_MM);
    return new Shaft(taper, measured, null, null, null, statedDiameterMm, 0.5, null);
  }

  private Taper truth(Shaft stated) {
    double common = error(0.02 * Math.sqrt(0.5));
    List<Station> real = new ArrayList<>();
    for (Station s : stated.taper().stations()) {
      real.add(
          new Station(
              s.xMm(),
              s.depthMm() + common + error(0.02 * Math.sqrt(0.5)),
              s.widthMm() + common + error(0.02 * Math.sqrt(0.5))));
    }
    return new Taper(SectionShape.ELLIPSE, real, LENGTH_MM);
  }

  /** The shaft's own give per newton, mm/N, the gauge's spring pushing back. */
  private double given(Taper taper, SetUp setUp) {
    double atLoad = flexibility(taper, setUp);
    SetUp atGauge =
        new SetUp(
            setUp.supportAMm(),
            setUp.supportBMm(),
            setUp.gaugeMm(),
            setUp.gaugeMm(),
            setUp.turnDegrees());
    return atLoad / (1 + springNPerMm * flexibility(taper, atGauge));
  }

  private double flexibility(Taper taper, SetUp setUp) {
    FlexibilityNodes nodes = FlexibilityNodes.of(taper, setUp, breaksMm);
    double sum = 0;
    for (int i = 0; i < nodes.xMm().length; i++) {
      double here = nodes.bendingPerMm()[i] + ratio * nodes.shearPerMm()[i];
      sum += here / modulusMPa.applyAsDouble(nodes.xMm()[i]);
    }
    double turned = Math.toRadians(2 * (setUp.turnDegrees() - grainDegrees));
    return sum / (1 + grainShare * Math.cos(turned));
  }

  /** Nine settled pairs up to 12 mm or 40 N, whichever comes first. */
  private HandReadings readings(double stiffness, double loadScale, double gaugeScale) {
    int n = 9;
    double greatestN = Math.min(40, 12 * stiffness);
    double[] loads = new double[n];
    double[] deflections = new double[n];
    for (int i = 0; i < n; i++) {
      double load = greatestN * i / (n - 1);
      loads[i] = load * loadScale + error(0.02);
      deflections[i] = load / stiffness * gaugeScale + error(0.005);
    }
    return new HandReadings(loads, deflections);
  }
}
