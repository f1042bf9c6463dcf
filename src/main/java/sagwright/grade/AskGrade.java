package sagwright.grade;

import sagwright.uncertainty.Estimate;

/**
 * How surely the finished stiffness will be what one ask wants.
 *
 * @param stiffnessNPerMm as forecast
 * @param chanceWithinTolerance that it lies within the ask's tolerance
 * @param chanceBelow that it lies below
 * @param chanceAbove that it lies above
 */
public record AskGrade(
    Ask ask,
    Estimate stiffnessNPerMm,
    double chanceWithinTolerance,
    double chanceBelow,
    double chanceAbove,
    Verdict verdict) {
  /** Grades one forecast stiffness. */
  static AskGrade of(Ask ask, Estimate stiffnessNPerMm, Sureness sureness) {
    double low = ask.lowestNPerMm();
    double high = ask.highestNPerMm();
    double within = Chance.between(low, high, stiffnessNPerMm);
    double below = Chance.below(low, stiffnessNPerMm);
    double above = Chance.above(high, stiffnessNPerMm);
    Verdict verdict = Verdict.UNDECIDED;
    if (within >= sureness.chance()) {
      verdict = Verdict.MEETS;
    } else if (below >= sureness.chance()) {
      verdict = Verdict.SOFTER;
    } else if (above >= sureness.chance()) {
      verdict = Verdict.STIFFER;
    }
    return new AskGrade(ask, stiffnessNPerMm, within, below, above, verdict);
  }
}
