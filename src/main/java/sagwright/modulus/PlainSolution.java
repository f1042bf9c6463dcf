package sagwright.modulus;

import java.util.List;
import sagwright.beam.Flexibility;
import sagwright.beam.FlexibilityGradient;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Contribution;

/**
 * A shaft of one wood: {@code E = J(c,g)/(1/k − C) − s·J(g,g)}, and its first-order budget (JCGM
 * 100:2008, 5.1.2).
 */
final class PlainSolution implements StiffnessSolution {
  private final BendTest test;
  private final double stiffnessNPerMm;
  private final double givenMmPerN;
  private final double ratio;
  private final double springNPerMm;
  private final Flexibility atLoad;
  private final Flexibility atGauge;

  /**
   * @param givenMmPerN the shaft's own give per newton, 1/k − C, above 0
   */
  PlainSolution(BendTest test, double stiffnessNPerMm, double givenMmPerN) {
    this.test = test;
    this.stiffnessNPerMm = stiffnessNPerMm;
    this.givenMmPerN = givenMmPerN;
    this.ratio = test.ratio().value();
    this.springNPerMm = test.instrument().gaugeSpringNPerMm();
    Taper taper = test.shaft().taper();
    SetUp setUp = test.setUp().positions();
    this.atLoad = Flexibility.of(taper, setUp);
    this.atGauge = springNPerMm == 0 ? new Flexibility(0, 0) : Flexibility.atGauge(taper, setUp);
  }

  @Override
  public double modulusMPa() {
    return atLoad.perMm(ratio) / givenMmPerN - springNPerMm * atGauge.perMm(ratio);
  }

  @Override
  public double shaftStiffnessNPerMm() {
    return modulusMPa() / atLoad.perMm(ratio);
  }

  @Override
  public Budget budget(double lineUncertaintyNPerMm) {
    double j = atLoad.perMm(ratio);
    double perCompliance = j / (givenMmPerN * givenMmPerN);
    double perStiffness = perCompliance / (stiffnessNPerMm * stiffnessNPerMm);
    double perRatio = atLoad.shearPerMm() / givenMmPerN - springNPerMm * atGauge.shearPerMm();
    double perScale = perStiffness * stiffnessNPerMm / 100;
    Instrument instrument = test.instrument();
    BenchSetUp setUp = test.setUp();
    PositionSensitivity positions =
        PositionSensitivity.of(setUp.positions(), this::modulusWithPositions);
    double positionUncertaintyMm = setUp.positionUncertaintyMm();
    return new Budget(
        List.of(
            new Contribution(BudgetSource.LINE, perStiffness * lineUncertaintyNPerMm),
            new Contribution(
                BudgetSource.LOAD_SCALE, perScale * instrument.loadScaleUncertaintyPercent()),
            new Contribution(
                BudgetSource.GAUGE_SCALE, perScale * instrument.gaugeScaleUncertaintyPercent()),
            new Contribution(BudgetSource.DIAMETER, diameterContributionMPa()),
            positions.contribution(BudgetSource.SUPPORT_A, positionUncertaintyMm),
            positions.contribution(BudgetSource.SUPPORT_B, positionUncertaintyMm),
            positions.contribution(BudgetSource.LOAD, positionUncertaintyMm),
            positions.contribution(BudgetSource.GAUGE, positionUncertaintyMm),
            new Contribution(
                BudgetSource.FRAME, perCompliance * setUp.frameComplianceUncertaintyMmPerN()),
            new Contribution(
                BudgetSource.RATIO, Math.abs(perRatio) * test.ratio().standardUncertainty())));
  }

  private double diameterContributionMPa() {
    Taper taper = test.shaft().taper();
    SetUp setUp = test.setUp().positions();
    FlexibilityGradient gradient = FlexibilityGradient.of(taper, setUp);
    FlexibilityGradient spring =
        springNPerMm == 0 ? null : FlexibilityGradient.atGauge(taper, setUp);
    return DiameterContribution.of(
        test.shaft(),
        (station, ofWidth) -> {
          double change = change(gradient, station, ofWidth) / givenMmPerN;
          return spring == null ? change : change - springNPerMm * change(spring, station, ofWidth);
        });
  }

  private double change(FlexibilityGradient gradient, int station, boolean ofWidth) {
    return ofWidth ? gradient.byWidth(station, ratio) : gradient.byDepth(station, ratio);
  }

  private double modulusWithPositions(SetUp moved) {
    return new ModulusEquation(test.shaft().taper(), null, moved, springNPerMm)
        .modulusMPa(givenMmPerN, ratio, Double.NaN);
  }
}
