package sagwright.modulus;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.SplicedModulus;
import sagwright.beam.SplicedTaper;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Contribution;

/**
 * A shaft that is spliced already: the modulus of its shaft wood is found so that the spliced shaft
 * shows the run's stiffness. There is no closed form: what the budget needs beyond the equation's
 * own derivatives are differences over five points through the whole model, good to 1e-9.
 */
final class SplicedSolution implements StiffnessSolution {
  private static final double RATIO_STEP = 0.1;
  private static final double STEP_OF_DIAMETER = 1e-3;

  private final BendTest test;
  private final double stiffnessNPerMm;
  private final double givenMmPerN;
  private final double ratio;
  private final double spliceModulusMPa;

  /**
   * @param givenMmPerN the shaft's own give per newton, 1/k − C, above 0
   */
  SplicedSolution(BendTest test, double stiffnessNPerMm, double givenMmPerN) {
    this.test = test;
    this.stiffnessNPerMm = stiffnessNPerMm;
    this.givenMmPerN = givenMmPerN;
    this.ratio = test.ratio().value();
    this.spliceModulusMPa = test.shaft().splice().modulusMPa();
  }

  @Override
  public double modulusMPa() {
    return modulus(test.shaft().taper(), test.setUp().positions());
  }

  @Override
  public double shaftStiffnessNPerMm() {
    return 1 / givenMmPerN;
  }

  @Override
  public Budget budget(double lineUncertaintyNPerMm) {
    Taper taper = test.shaft().taper();
    SetUp setUp = test.setUp().positions();
    Splice splice = test.shaft().splice();
    SplicedFlexibility flexibility = SplicedFlexibility.of(new SplicedTaper(taper, splice), setUp);
    SplicedModulus solved = flexibility.modulusFor(givenMmPerN, ratio);
    double perCompliance = Math.abs(solved.byMmPerN());
    double perStiffness = perCompliance / (stiffnessNPerMm * stiffnessNPerMm);
    double perScale = perStiffness * stiffnessNPerMm / 100;
    double perRatio =
        slope(r -> flexibility.modulusFor(givenMmPerN, r).modulusMPa(), ratio, RATIO_STEP);
    PositionSensitivity positions = PositionSensitivity.of(setUp, moved -> modulus(taper, moved));
    double positionUncertaintyMm = test.setUp().positionUncertaintyMm();
    Instrument instrument = test.instrument();
    return new Budget(
        List.of(
            new Contribution(BudgetSource.LINE, perStiffness * lineUncertaintyNPerMm),
            new Contribution(
                BudgetSource.LOAD_SCALE, perScale * instrument.loadScaleUncertaintyPercent()),
            new Contribution(
                BudgetSource.GAUGE_SCALE, perScale * instrument.gaugeScaleUncertaintyPercent()),
            new Contribution(
                BudgetSource.DIAMETER, DiameterContribution.of(test.shaft(), this::perDiameter)),
            positions.contribution(BudgetSource.SUPPORT_A, positionUncertaintyMm),
            positions.contribution(BudgetSource.SUPPORT_B, positionUncertaintyMm),
            positions.contribution(BudgetSource.LOAD, positionUncertaintyMm),
            positions.contribution(BudgetSource.GAUGE, positionUncertaintyMm),
            new Contribution(
                BudgetSource.FRAME,
                perCompliance * test.setUp().frameComplianceUncertaintyMmPerN()),
            new Contribution(
                BudgetSource.RATIO, Math.abs(perRatio) * test.ratio().standardUncertainty()),
            new Contribution(
                BudgetSource.SPLICE,
                Math.abs(solved.bySpliceModulus())
                    * splice.modulusMPa()
                    * splice.modulusUncertaintyPercent()
                    / 100)));
  }

  private double perDiameter(int station, boolean ofWidth) {
    SetUp setUp = test.setUp().positions();
    Station there = test.shaft().taper().station(station);
    double diameterMm = ofWidth ? there.widthMm() : there.depthMm();
    return slope(
        by -> modulus(nudged(station, ofWidth, by), setUp), 0, STEP_OF_DIAMETER * diameterMm);
  }

  private Taper nudged(int station, boolean ofWidth, double by) {
    Taper taper = test.shaft().taper();
    List<Station> stations = new ArrayList<>(taper.stations());
    Station s = stations.get(station);
    stations.set(
        station,
        new Station(s.xMm(), s.depthMm() + (ofWidth ? 0 : by), s.widthMm() + (ofWidth ? by : 0)));
    return new Taper(taper.shape(), stations, taper.lengthMm());
  }

  private double modulus(Taper taper, SetUp setUp) {
    return new ModulusEquation(taper, test.shaft().splice(), setUp, 0)
        .modulusMPa(givenMmPerN, ratio, spliceModulusMPa);
  }

  private static double slope(DoubleUnaryOperator f, double at, double step) {
    double near = f.applyAsDouble(at + step) - f.applyAsDouble(at - step);
    double far = f.applyAsDouble(at + 2 * step) - f.applyAsDouble(at - 2 * step);
    return (8 * near - far) / (12 * step);
  }
}
