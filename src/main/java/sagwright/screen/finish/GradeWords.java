package sagwright.screen.finish;

import sagwright.job.GradeChange;
import sagwright.quantity.Figures;

/** How a grade differs from the one before it, in words. */
public final class GradeWords {
  private GradeWords() {}

  /**
   * @param sureness the shop's, 0 to 1
   * @return as "was 78 in 100, now 64: run 2 is 2.0 % softer"
   */
  public static String of(GradeChange change, double sureness) {
    return Figures.chanceChange(change.wasChance(), change.isChance(), sureness)
        + ": "
        + String.join("; ", change.because());
  }
}
