package sagwright.screen.orders;

import java.util.function.Consumer;
import sagwright.beam.Taper;
import sagwright.grade.Order;
import sagwright.job.PlannedFinish;
import sagwright.screen.Reply;

/**
 * What the maker can ask for at the orders. Called on the event thread; every call returns at once,
 * what comes of it is seen in the next {@link OrdersView}.
 */
public interface OrdersActions {
  /** Keeps a new order. */
  void take(Order order, Reply reply);

  /**
   * Takes the workshop's last action back, whichever page it was done on.
   *
   * @param said hears what was taken back, or why nothing was, on the event thread
   */
  void undo(Consumer<String> said);

  /** Keeps a newer version of an order; the older ones stay. */
  void change(Order order, Reply reply);

  /**
   * Lays an order that is being written down into the rack. Of several that come quickly only the
   * newest is answered.
   *
   * @param order without problems (OrderCheck)
   * @param pickedTag null for the blank promised to it, or else the best
   * @param planned hears what comes of it, on the event thread
   */
  void plan(Order order, String pickedTag, Consumer<PlannedFinish> planned);

  /**
   * Keeps a taper under a name of the shop's own.
   *
   * @param taper round, its first knot at 0 and its last at its length
   */
  void keepTaper(String name, Taper taper, Reply reply);

  void renameTaper(long id, String name, Reply reply);

  void deleteTaper(long id, Reply reply);

  /** Takes back what was done last to a kept taper, unless something else was done since. */
  void undoTaper(Reply reply);
}
