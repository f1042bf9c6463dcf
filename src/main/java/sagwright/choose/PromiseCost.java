package sagwright.choose;

/**
 * What it would mean to promise a blank to an order now.
 *
 * @param chance of the order with this blank
 * @param othersWith the greatest sum of chances of all other orders, if this blank stayed free
 * @param othersWithout the same without this blank
 * @param greatestOfAll the greatest sum of chances of all orders together
 */
public record PromiseCost(
    double chance, double othersWith, double othersWithout, double greatestOfAll) {
  /** What the other orders lose by it, as a sum of chances, 0 or above. */
  public double toOthers() {
    return Math.max(0, othersWith - othersWithout);
  }

  /** By how much all orders together fall short of the best pairing, 0 or above. */
  public double toAll() {
    return Math.max(0, greatestOfAll - (chance + othersWithout));
  }
}
