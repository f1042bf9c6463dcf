package sagwright.modulus;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Contribution;

/**
 * A shaft that is spliced already: the modulus of its shaft wood is found so that the spliced shaft
 * shows the run's stiffness. There is no closed form, so the budget's sensitivities are central
 * differences through the whole model.
 */
final class SplicedSolution implements StiffnessSolution {
  private static final double RELATIVE_STEP = 1e-4;
  private static final double DIAMETER_STEP_MM = 1e-3;

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
    return modulus(test.shaft().taper(), test.setUp().positions(), givenMmPerN);
  }

  @Override
  public double shaftStiffnessNPerMm() {
    return 1 / givenMmPerN;
  }

  @Override
  public Budget budget(double lineUncertaintyNPerMm) {
    Taper taper = test.shaft().taper();
    SetUp setUp = test.setUp().positions();
    ModulusEquation equation = equation(taper, setUp);
    double perCompliance =
        -slope(given -> modulus(taper, setUp, given), givenMmPerN, givenMmPerN * RELATIVE_STEP);
    double perStiffness = perCompliance / (stiffnessNPerMm * stiffnessNPerMm);
    double perScale = perStiffness * stiffnessNPerMm / 100;
    double perRatio =
        slope(r -> equation.modulusMPa(givenMmPerN, r, spliceModulusMPa), ratio, RELATIVE_STEP);
    double perSpliceModulus =
        slope(
            m -> equation.modulusMPa(givenMmPerN, ratio, m),
            spliceModulusMPa,
            spliceModulusMPa * RELATIVE_STEP);
    PositionSensitivity positions =
        PositionSensitivity.of(setUp, moved -> modulus(taper, moved, givenMmPerN));
    double positionUncertaintyMm = test.setUp().positionUncertaintyMm();
    Instrument instrument = test.instrument();
    Splice splice = test.shaft().splice();
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
                Math.abs(perSpliceModulus)
                    * splice.modulusMPa()
                    * splice.modulusUncertaintyPercent()
                    / 100)));
  }

  private double perDiameter(int station, boolean ofWidth) {
    SetUp setUp = test.setUp().positions();
    return slope(
        by -> modulus(nudged(station, ofWidth, by), setUp, givenMmPerN), 0, DIAMETER_STEP_MM);
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

  private double modulus(Taper taper, SetUp setUp, double given) {
    return equation(taper, setUp).modulusMPa(given, ratio, spliceModulusMPa);
  }

  private ModulusEquation equation(Taper taper, SetUp setUp) {
    return new ModulusEquation(taper, test.shaft().splice(), setUp, 0);
  }

  private static double slope(DoubleUnaryOperator f, double at, double step) {
    return (f.applyAsDouble(at + step) - f.applyAsDouble(at - step)) / (2 * step);
  }
}
