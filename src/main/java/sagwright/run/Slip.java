package sagwright.run;

/**
 * A place on the loading branch where the deflection jumps with no load to match: the shaft settled
 * on a support, or the gauge's tip caught. On either side the branch is the same straight line but
 * for the jump.
 *
 * <p>It is told from a bend by what it explains: one step and one slope must leave no more than the
 * samples' own scatter, and clearly less than a parabola does; and the slopes of the two sides must
 * agree.
 *
 * @param block where it jumps
 * @param jumpMm how much farther the gauge stands above than below
 * @param varianceN2 of a sample's load about the line with its step
 */
record Slip(int block, double jumpMm, double varianceN2) {
  /** What the step must take off the line's squares, in variances of a sample. */
  private static final double SURELY = 50;

  /** By how much it must do better than a parabola, in variances of a sample. */
  private static final double BETTER_THAN_A_BEND = 25;

  /**
   * How many times a sample's variance the squares left over may come to for each sample: the rough
   * slope that the variance rests on lies too low by a great slip.
   */
  private static final double MAY_SCATTER = 2;

  /** Standard deviations that the slopes of the two sides may differ. */
  private static final double MAY_DIFFER = 3;

  /** Share of the greatest load that either side spans at the least. */
  private static final double LEAST_SIDE = 0.15;

  private static final int LEAST_SAMPLES = 8;

  /** One slope and one step at a block, and the squares that they leave in N². */
  private record Step(int block, LineSums below, LineSums above) {
    double slope() {
      return (below.sxy() + above.sxy()) / (below.sxx() + above.sxx());
    }

    double squares() {
      return below.syy() + above.syy() - slope() * (below.sxy() + above.sxy());
    }

    double jumpMm() {
      return above.meanX() - below.meanX() - (above.meanY() - below.meanY()) / slope();
    }

    boolean slopesAgree(double varianceN2) {
      double differ = above.sxy() / above.sxx() - below.sxy() / below.sxx();
      double chance = Math.sqrt(varianceN2 / above.sxx() + varianceN2 / below.sxx());
      return Math.abs(differ) <= MAY_DIFFER * chance;
    }
  }

  /** The slip between two blocks of a branch whose samples scatter so much; null where none is. */
  static Slip on(LoadingBranch branch, int from, int to, double varianceN2) {
    Step best = bestStep(branch, from, to);
    if (best == null) {
      return null;
    }
    BranchSums.Parabola bend = branch.sums().parabola(from, to);
    double left = best.squares();
    int free = best.below().n() + best.above().n() - 3;
    boolean isSlip =
        bend.squares() + bend.gain() - left > SURELY * varianceN2
            && bend.squares() - left > BETTER_THAN_A_BEND * varianceN2
            && left <= MAY_SCATTER * varianceN2 * free
            && best.slopesAgree(Math.max(varianceN2, left / free));
    return isSlip ? new Slip(best.block(), best.jumpMm(), left / free) : null;
  }

  private static Step bestStep(LoadingBranch branch, int from, int to) {
    BranchSums sums = branch.sums();
    double lowest = branch.progress(from) + LEAST_SIDE;
    double highest = branch.progress(to - 1) - LEAST_SIDE;
    Step best = null;
    for (int b = from + 1; b < to - 1; b++) {
      boolean hasSides =
          branch.progress(b) >= lowest
              && branch.progress(b) <= highest
              && sums.samples(from, b) >= LEAST_SAMPLES
              && sums.samples(b + 1, to) >= LEAST_SAMPLES;
      if (hasSides) {
        Step step = new Step(b, sums.line(from, b), sums.line(b + 1, to));
        best = best == null || step.squares() < best.squares() ? step : best;
      }
    }
    return best;
  }
}
