package sagwright.check;

/**
 * Cumulative sums of what lies beyond a slack above and below a target (NIST/SEMATECH e-Handbook,
 * 6.3.2.3). They tell since when a bench has crept away.
 *
 * @param upper one value a reading, 0 or above
 * @param lower likewise
 * @param firstSignal index of the first reading at which a sum passed the decision interval; −1 for
 *     none
 */
public record Cusum(double[] upper, double[] lower, int firstSignal) {
  /**
   * @param rule in the unit of the readings
   */
  public static Cusum of(double[] readings, Rule rule) {
    double[] upper = new double[readings.length];
    double[] lower = new double[readings.length];
    int firstSignal = -1;
    double above = 0;
    double below = 0;
    for (int i = 0; i < readings.length; i++) {
      above = Math.max(0, above + readings[i] - rule.target() - rule.slack());
      below = Math.max(0, below + rule.target() - rule.slack() - readings[i]);
      upper[i] = above;
      lower[i] = below;
      if (firstSignal < 0 && Math.max(above, below) > rule.decisionInterval()) {
        firstSignal = i;
      }
    }
    return new Cusum(upper, lower, firstSignal);
  }

  /**
   * The first reading of the climb that the greater sum is on at the end; −1 where it is on none.
   */
  public int climbBegan() {
    int last = upper.length - 1;
    if (last < 0 || Math.max(upper[last], lower[last]) == 0) {
      return -1;
    }
    double[] climbing = upper[last] >= lower[last] ? upper : lower;
    int began = last;
    while (began > 0 && climbing[began - 1] > 0) {
      began--;
    }
    return began;
  }

  /**
   * @param target what the readings ought to be
   * @param slack k: what a reading may be off before it counts
   * @param decisionInterval h: the sum that signals
   */
  public record Rule(double target, double slack, double decisionInterval) {
    /** For a baseline: slack ½σ and interval 5σ, the usual choice to find a shift of 1 σ. */
    public static Rule of(ChartBaseline baseline) {
      return new Rule(baseline.centre(), 0.5 * baseline.sigma(), 5 * baseline.sigma());
    }
  }
}
