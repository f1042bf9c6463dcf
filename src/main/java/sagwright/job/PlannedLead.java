package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.finish.ButtBore;
import sagwright.finish.FinishPlan;
import sagwright.finish.LeadAim;
import sagwright.finish.LeadBore;
import sagwright.finish.LeadPlan;
import sagwright.finish.LeadSolver;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;

/**
 * The lead that brings the weight and the balance of an order, or why there is none to tell.
 *
 * @param lead null where nothing could be worked out
 * @param weights the order's weights with that lead instead of what lay in its bore; null where
 *     there is none
 * @param inWords one line for people
 */
public record PlannedLead(LeadPlan lead, List<Weight> weights, String inWords) {
  /** Where an order states no tolerance a miss counts in shares of these. */
  private static final double TOLERANCE_G = 10;

  private static final double TOLERANCE_MM = 10;

  public PlannedLead {
    weights = weights == null ? null : List.copyOf(weights);
  }

  /** Whether taking it into the order changes anything. */
  public boolean canBeTaken() {
    return weights != null;
  }

  /**
   * @param woodDensityKgM3 null where the blank was not weighed
   */
  static PlannedLead of(FinishPlan plan, Ask ask, Double woodDensityKgM3, ButtBore shop) {
    if (ask.massG() == null || ask.balanceFromButtMm() == null) {
      return none("Ask a weight and a balance, and the lead for both is worked out.");
    }
    if (woodDensityKgM3 == null) {
      return none("Weigh the blank, and the lead for weight and balance is worked out.");
    }
    LeadBore bore = shop.in(plan.lengthMm());
    List<Weight> others =
        plan.weights().stream()
            .filter(w -> w.toMm() <= bore.fromMm() || w.fromMm() >= bore.toMm())
            .toList();
    try {
      LeadPlan lead =
          new LeadSolver(plan.withWeights(others), woodDensityKgM3, bore, aim(ask)).solve();
      List<Weight> weights = new ArrayList<>(others);
      if (lead.lead() != null) {
        weights.add(toTenths(lead.lead()));
      }
      return new PlannedLead(lead, weights.equals(plan.weights()) ? null : weights, lead.inWords());
    } catch (IllegalArgumentException e) {
      return none(
          String.format(
              Locale.ROOT,
              "No lead: a bore %.0f mm wide and %.0f deep does not go into this butt (%s).",
              bore.diameterMm(),
              shop.deepestMm(),
              e.getMessage()));
    }
  }

  private static PlannedLead none(String why) {
    return new PlannedLead(null, null, why);
  }

  /** No maker saws lead finer. */
  private static Weight toTenths(Weight lead) {
    return new Weight(
        Math.round(lead.fromMm() * 10) / 10.0,
        Math.round(lead.toMm() * 10) / 10.0,
        lead.diameterMm(),
        lead.densityKgM3());
  }

  private static LeadAim aim(Ask ask) {
    return new LeadAim(
        ask.massG().value(),
        tolerance(ask.massG(), TOLERANCE_G),
        ask.balanceFromButtMm().value(),
        tolerance(ask.balanceFromButtMm(), TOLERANCE_MM));
  }

  private static double tolerance(Aim aim, double otherwise) {
    return aim.tolerance() != null && aim.tolerance() > 0 ? aim.tolerance() : otherwise;
  }
}
