package sagwright.screen.orders;

import java.util.List;
import sagwright.grade.AskPlaces;
import sagwright.grade.Order;
import sagwright.grade.WordScale;
import sagwright.job.FinishedCues.FinishedCue;
import sagwright.job.KeepTapers.KeptTaper;
import sagwright.screen.ShopUnits;
import sagwright.wood.Species;

/**
 * All that the orders page shows at one moment. Immutable.
 *
 * @param orders every order, newest first
 * @param nextNumber offered for a new order
 * @param places the shop's usual set-ups, for asks
 * @param words the shop's scale, null where none is set
 * @param woods to choose from
 * @param cues that can be asked for again
 * @param tapers that the shop keeps
 */
public record OrdersView(
    List<Row> orders,
    String nextNumber,
    AskPlaces places,
    WordScale words,
    List<Species> woods,
    List<FinishedCue> cues,
    List<KeptTaper> tapers,
    ShopUnits units) {
  public OrdersView {
    orders = List.copyOf(orders);
    woods = List.copyOf(woods);
    cues = List.copyOf(cues);
    tapers = List.copyOf(tapers);
  }

  /**
   * An order in the list.
   *
   * @param blank the tag that is promised to it; empty for none
   */
  public record Row(Order order, String blank) {}
}
