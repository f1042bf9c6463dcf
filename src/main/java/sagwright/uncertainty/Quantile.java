package sagwright.uncertainty;

/** A quantile of drawn values, straight between order statistics. */
public final class Quantile {
  private Quantile() {}

  /**
   * @param sorted rising, one or more
   * @param share 0 to 1
   */
  public static double ofSorted(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int below = (int) Math.floor(at);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }
}
