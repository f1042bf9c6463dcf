package sagwright.screen.choose;

import java.util.HashMap;
import java.util.Map;
import sagwright.choose.Allocation;
import sagwright.job.AllocateOrders;
import sagwright.screen.choose.ChooseView.AllOrders;
import sagwright.screen.choose.ChooseView.AllOrders.Gets;

/** Makes what is shown of all open orders at once. */
final class AllOrdersViews {
  private AllOrdersViews() {}

  /** All open orders at once. */
  static AllOrders of(AllocateOrders.Answer answer) {
    Map<String, Gets> atOnce = byOrder(answer.greatest());
    Map<String, Gets> inTurn = byOrder(answer.firstCome());
    return new AllOrders(
        answer.chances().orders().stream()
            .map(
                order ->
                    new AllOrders.Line(
                        order,
                        ChooseViews.asks(answer.asks().get(order)),
                        atOnce.getOrDefault(order, Gets.NONE),
                        inTurn.getOrDefault(order, Gets.NONE)))
            .toList(),
        answer.greatest().sumOfChances(),
        answer.firstCome().sumOfChances());
  }

  private static Map<String, Gets> byOrder(Allocation allocation) {
    Map<String, Gets> byOrder = new HashMap<>();
    allocation.pairs().forEach(p -> byOrder.put(p.order(), new Gets(p.tag(), p.chance())));
    return byOrder;
  }
}
