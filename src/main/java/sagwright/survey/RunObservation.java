package sagwright.survey;

import sagwright.beam.Flexibility;
import sagwright.beam.FlexibilityNodes;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;
import sagwright.modulus.BendTest;
import sagwright.modulus.BudgetSource;
import sagwright.modulus.Evaluation;
import sagwright.uncertainty.Contribution;

/**
 * One run as the models see it: the modulus that it would show if the shaft had one alone, and how
 * much bending and shear each place along the shaft lends to its give.
 *
 * <p>With a gauge spring s the shaft's give per newton is F(c,g)/(1 + s·F(g,g)), F the flexibility
 * with 1/E(x) inside the integral (docs/contract.md, section 2, solved for the give); what the run
 * would show by the formula for one modulus is then J(c,g)·(1 + s·F(g,g))/F(c,g) − s·J(g,g).
 */
final class RunObservation {
  private final BendTest test;
  private final double modulusMPa;
  private final double independentUncertaintyMPa;
  private final double evenAtLoadPerMm;
  private final double evenAtGaugePerMm;

  RunObservation(SurveyRun run) {
    this.test = run.test();
    Evaluation evaluation = run.evaluation();
    this.modulusMPa = evaluation.modulusMPa();
    this.independentUncertaintyMPa = independentUncertainty(evaluation);
    double r = ratio();
    this.evenAtLoadPerMm = Flexibility.of(taper(), setUp()).perMm(r);
    this.evenAtGaugePerMm =
        springNPerMm() == 0 ? 0 : Flexibility.atGauge(taper(), setUp()).perMm(r);
  }

  /**
   * Line (with gauge and load noise in it) and the four positions: what each run has of its own.
   */
  private static double independentUncertainty(Evaluation evaluation) {
    double sum = 0;
    for (Contribution c : evaluation.budget().contributions()) {
      switch (c.source()) {
        case BudgetSource.LINE,
            BudgetSource.SUPPORT_A,
            BudgetSource.SUPPORT_B,
            BudgetSource.LOAD,
            BudgetSource.GAUGE ->
            sum += c.standardUncertainty() * c.standardUncertainty();
        default -> {
          // common to all runs of the shaft and the bench
        }
      }
    }
    return Math.sqrt(sum);
  }

  BendTest test() {
    return test;
  }

  Taper taper() {
    return test.shaft().taper();
  }

  SetUp setUp() {
    return test.setUp().positions();
  }

  double springNPerMm() {
    return test.instrument().gaugeSpringNPerMm();
  }

  /** r = E/G that this run's modulus was worked out with. */
  double ratio() {
    return test.ratio().value();
  }

  double modulusMPa() {
    return modulusMPa;
  }

  double independentUncertaintyMPa() {
    return independentUncertaintyMPa;
  }

  /** J(c,g) of the shaft as it lies, 1/mm. */
  double evenFlexibilityPerMm() {
    return evenAtLoadPerMm;
  }

  /** The shaft's own give per newton as measured, 1/k − C, in mm/N. */
  double givenMmPerN() {
    return evenAtLoadPerMm / (modulusMPa + springNPerMm() * evenAtGaugePerMm);
  }

  /** Places and shares of F(c,g), exact for an E(x) with kinks or steps at the breaks. */
  FlexibilityNodes atLoad(double... breaksMm) {
    return FlexibilityNodes.of(taper(), setUp(), breaksMm);
  }

  /** Places and shares of F(g,g). */
  FlexibilityNodes atGauge(double... breaksMm) {
    SetUp s = setUp();
    SetUp loadedAtGauge =
        new SetUp(s.supportAMm(), s.supportBMm(), s.gaugeMm(), s.gaugeMm(), s.turnDegrees());
    return FlexibilityNodes.of(taper(), loadedAtGauge, breaksMm);
  }

  /** The modulus that the run would show with the flexibilities F(c,g) and F(g,g), in mm/N. */
  double shownMPa(double atLoad, double atGauge) {
    double s = springNPerMm();
    return evenAtLoadPerMm * (1 + s * atGauge) / atLoad - s * evenAtGaugePerMm;
  }

  /** How {@link #shownMPa} changes with a parameter, from how the two flexibilities do. */
  double shownChange(double atLoad, double atGauge, double atLoadChange, double atGaugeChange) {
    double s = springNPerMm();
    return evenAtLoadPerMm
        * (s * atGaugeChange - (1 + s * atGauge) * atLoadChange / atLoad)
        / atLoad;
  }
}
