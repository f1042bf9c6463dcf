package sagwright.screen.choose;

import java.util.List;
import sagwright.choose.RankingWeights;

/**
 * What the maker can ask for at the Choose screen. Called on the event thread; every call returns
 * at once, what comes of it is seen in the next {@link ChooseView}.
 */
public interface ChooseActions {
  /** Reads again what the workshop holds now; opens the first open order where none is open. */
  void refresh();

  /** Opens an order by its number. */
  void open(String number);

  /**
   * Steps through the open orders.
   *
   * @param by 1 for the next, −1 for the one before
   */
  void step(int by);

  /**
   * Looks closely at a few blanks, and at what a promise of the first would cost the other orders.
   *
   * @param tags the first pick first
   */
  void lookAt(List<String> tags);

  /**
   * Promises a blank.
   *
   * @param order the number of the order that is shown
   */
  void promise(String tag, String order);

  /** Takes the last promise back; where none was made here, that of the order. */
  void takeBack();

  /** Takes the workshop's last action back, whichever page it was done on. */
  void undo();

  /** What ranks blanks from now on. */
  void weigh(RankingWeights weights);

  /** All open orders at once: the next view has them. */
  void allOrders();
}
