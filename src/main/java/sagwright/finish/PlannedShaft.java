package sagwright.finish;

import sagwright.beam.SetUp;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.SplicedTaper;

/**
 * A finish plan made ready for many blanks: what of their forecasts is the same for all is worked
 * out once, when it is first asked for. Any thread may ask.
 */
final class PlannedShaft {
  private final FinishPlan plan;
  private final SplicedTaper wood;
  private final Outline outline;
  private volatile FinishedMass.Linear mass;

  /**
   * @param plan without problems (FinishCheck)
   */
  PlannedShaft(FinishPlan plan) {
    this.plan = plan;
    wood = new SplicedTaper(plan.taper(), plan.splice());
    outline = Outline.lesserOf(plan.taper());
  }

  FinishPlan plan() {
    return plan;
  }

  SplicedTaper wood() {
    return wood;
  }

  Outline outline() {
    return outline;
  }

  /** For wood of one modulus all along. */
  SplicedFlexibility flexibility(SetUp setUp) {
    return SplicedFlexibility.of(wood, setUp);
  }

  MassAndBalance massAndBalance(double woodDensityKgM3) {
    FinishedMass.Linear known = mass;
    if (known == null) {
      known = FinishedMass.linear(plan);
      mass = known;
    }
    return known.at(woodDensityKgM3);
  }
}
