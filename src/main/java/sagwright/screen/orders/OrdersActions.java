package sagwright.screen.orders;

import sagwright.grade.Order;
import sagwright.screen.Reply;

/**
 * What the maker can ask for at the orders. Called on the event thread; every call returns at once,
 * what comes of it is seen in the next {@link OrdersView}.
 */
public interface OrdersActions {
  /** Keeps a new order. */
  void take(Order order, Reply reply);

  /** Keeps a newer version of an order; the older ones stay. */
  void change(Order order, Reply reply);
}
