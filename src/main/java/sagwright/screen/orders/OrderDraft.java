package sagwright.screen.orders;

import sagwright.finish.FinishPlan;
import sagwright.grade.Order;

/**
 * An order as far as it is typed.
 *
 * @param plan null as long as what is typed makes no shaft
 * @param order null as long as it is not whole
 * @param wanting what is wanting first, one line; empty where the order is whole
 */
record OrderDraft(FinishPlan plan, Order order, String wanting) {}
