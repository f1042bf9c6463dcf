package sagwright.choose;

import sagwright.grade.GradedForecast;

/**
 * How one blank stands against one order.
 *
 * @param graded without the first bending frequency; null for a blank that has no run
 * @param obstacle null for a blank that can serve
 */
public record Standing(Candidate candidate, GradedForecast graded, Obstacle obstacle) {
  public String tag() {
    return candidate.tag();
  }

  public boolean canServe() {
    return obstacle == null;
  }

  /** That all that is asked lies within its tolerance; 0 for a blank that cannot serve. */
  public double chance() {
    return canServe() ? graded.chanceOfAll() : 0;
  }

  /** How far the forecast lies from the ask, in N/mm, 0 or above. */
  double missNPerMm() {
    return Math.abs(
        graded.grade().stiffnessNPerMm().value() - graded.order().ask().stiffnessNPerMm());
  }

  double leastSpareMm() {
    return graded.forecast().cut().leastSpareMm();
  }
}
