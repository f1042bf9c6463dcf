package sagwright.choose;

/**
 * What it would mean to promise a blank to an order now.
 *
 * @param chance of the order with this blank
 * @param othersWith the greatest sum of chances of all other orders, if this blank stayed free
 * @param othersWithout the same without this blank
 */
public record PromiseCost(double chance, double othersWith, double othersWithout) {
  /** What the other orders lose by it, as a sum of chances, 0 or above. */
  public double toOthers() {
    return Math.max(0, othersWith - othersWithout);
  }
}
