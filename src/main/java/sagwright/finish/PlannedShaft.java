package sagwright.finish;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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
  private final Map<SetUp, SplicedFlexibility> flexibilities = new ConcurrentHashMap<>();
  private volatile FinishedMass.Linear mass;

  /**
   * @param plan without problems (FinishCheck)
   */
  PlannedShaft(FinishPlan plan) {
    this.plan = plan;
    wood = new SplicedTaper(plan.taper(), plan.splice());
  }

  FinishPlan plan() {
    return plan;
  }

  SplicedTaper wood() {
    return wood;
  }

  /** For wood of one modulus all along. */
  SplicedFlexibility flexibility(SetUp setUp) {
    return flexibilities.computeIfAbsent(setUp, s -> SplicedFlexibility.of(wood, s));
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
