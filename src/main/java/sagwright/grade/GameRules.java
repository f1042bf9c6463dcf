package sagwright.grade;

/**
 * What the rules of a game allow a cue to be. They are written in inches and ounces; here are their
 * own metric figures, or the inches and ounces where they give none.
 *
 * @param mostMassG NaN where the rules say nothing
 * @param mostTipMm NaN where the rules say nothing
 * @param mostFerruleMm of metal; NaN where the rules say nothing
 */
public record GameRules(
    String game, double leastLengthMm, double mostMassG, double mostTipMm, double mostFerruleMm) {
  /**
   * World Professional Billiards and Snooker Association, Official Rules of the Games of Snooker
   * and English Billiards, section 1, rule 3 (Cue): not less than 3 ft, 914 mm, and of the
   * traditional tapered shape.
   */
  public static final GameRules SNOOKER =
      new GameRules("snooker rules", 914, Double.NaN, Double.NaN, Double.NaN);

  /**
   * World Pool-Billiard Association, Tournament Table and Equipment Specifications, 17 (Cue
   * Sticks): at least 40 inches (1.016 m), at most 25 oz (708.75 g there), a tip at most 14 mm
   * wide, a metal ferrule at most 1 inch long.
   */
  public static final GameRules POOL = new GameRules("pool rules", 1016, 708.75, 14, 25.4);
}
