package sagwright.screen.orders;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.grade.Order;
import sagwright.grade.WordScale;
import sagwright.screen.ShopUnits;

/**
 * All that the orders page shows at one moment. Immutable.
 *
 * @param orders every order, newest first
 * @param nextNumber offered for a new order
 * @param usual the shop's usual set-up, for asks
 * @param words the shop's scale, null where none is set
 * @param species names to choose from
 */
public record OrdersView(
    List<Row> orders,
    String nextNumber,
    SetUp usual,
    WordScale words,
    List<String> species,
    ShopUnits units) {
  public OrdersView {
    orders = List.copyOf(orders);
    species = List.copyOf(species);
  }

  /**
   * An order in the list.
   *
   * @param blank the tag that is promised to it; empty for none
   */
  public record Row(Order order, String blank) {}
}
