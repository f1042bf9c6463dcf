package sagwright.choose;

import java.util.List;

/**
 * Which order gets which blank, each blank one order at the most.
 *
 * @param pairs by the order in which the orders came in
 * @param without the orders that get none
 */
public record Allocation(List<Pair> pairs, List<String> without) {
  public Allocation {
    pairs = List.copyOf(pairs);
    without = List.copyOf(without);
  }

  /**
   * An order with its blank.
   *
   * @param order its number
   */
  public record Pair(String order, String tag, double chance) {}

  public double sumOfChances() {
    return pairs.stream().mapToDouble(Pair::chance).sum();
  }
}
