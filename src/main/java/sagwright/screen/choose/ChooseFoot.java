package sagwright.screen.choose;

import java.util.List;
import sagwright.screen.choose.ChooseView.AllOrders;
import sagwright.screen.choose.ChooseView.Cost;
import sagwright.screen.choose.ChooseView.Row;

/**
 * What the foot of the page says, and its one control.
 *
 * @param first the large line
 * @param second the small one
 * @param control the words on the control
 * @param canPromise whether Enter does something
 */
record ChooseFoot(String first, String second, String control, boolean canPromise) {
  /** A longer tag has no room on the control; the foot says it. */
  private static final int LONGEST_ON_CONTROL = 7;

  /** Of all orders at once. */
  static ChooseFoot ofAllOrders(ChooseView view, AllOrders.Line marked) {
    String words =
        view.said().isEmpty() ? "Each blank goes to one order at the most." : view.said();
    return new ChooseFoot(
        words,
        "The pairing with the greatest sum of chances.  Nothing is promised by looking at it.",
        "Open " + (marked == null ? "" : shortened(marked.order())),
        marked != null);
  }

  private static String shortened(String name) {
    return name.length() <= LONGEST_ON_CONTROL ? name : "order";
  }

  /** Of the picked blanks, the first pick first. */
  static ChooseFoot ofPicks(ChooseView view, List<String> picked) {
    if (picked.isEmpty()) {
      String next = view.rowCount() == 0 ? "" : ChooseWords.nextStep(view);
      return new ChooseFoot(view.said().isEmpty() ? next : view.said(), "", "Promise", false);
    }
    boolean isPromised = view.order().promisedTag() != null;
    Row lead = view.servingRow(picked.get(0)).orElseThrow();
    String tag = isPromised ? view.order().promisedTag() : lead.tag();
    String control =
        (isPromised ? "Promised" : "Promise")
            + (tag.length() <= LONGEST_ON_CONTROL ? " " + tag : "");
    String why = ChooseWords.why(view, lead);
    return view.said().isEmpty()
        ? new ChooseFoot(why, second(view, lead, isPromised), control, !isPromised)
        : new ChooseFoot(view.said(), why, control, !isPromised);
  }

  private static String second(ChooseView view, Row lead, boolean isPromised) {
    if (isPromised) {
      return "U takes the promise back.  Page Down: the next open order.";
    }
    Cost cost = view.cost();
    boolean isThis = cost != null && cost.tag().equals(lead.tag());
    int warnings = lead.warnings().size();
    String mind =
        warnings == 0
            ? "  A promise can be taken back."
            : "  Mind " + (warnings == 1 ? "a warning" : warnings + " warnings") + ": key C.";
    return ChooseWords.cost(isThis ? cost : null) + mind;
  }
}
