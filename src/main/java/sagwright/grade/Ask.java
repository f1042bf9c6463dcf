package sagwright.grade;

import sagwright.beam.SetUp;

/**
 * The stiffness that a player has asked for at a stated set-up on the finished shaft.
 *
 * @param setUp not turned: the finished shaft is round
 * @param tolerancePercent to either side of the stiffness
 * @param massG null where none is asked
 * @param balanceFromButtMm null where none is asked
 */
public record Ask(
    SetUp setUp,
    double stiffnessNPerMm,
    double tolerancePercent,
    Aim massG,
    Aim balanceFromButtMm) {
  /** A stiffness alone. */
  public static Ask ofStiffness(SetUp setUp, double stiffnessNPerMm, double tolerancePercent) {
    return new Ask(setUp, stiffnessNPerMm, tolerancePercent, null, null);
  }

  public double lowestNPerMm() {
    return stiffnessNPerMm * (1 - tolerancePercent / 100);
  }

  public double highestNPerMm() {
    return stiffnessNPerMm * (1 + tolerancePercent / 100);
  }
}
