package sagwright.screen.orders;

import java.util.List;
import sagwright.grade.Aim;
import sagwright.grade.Order;
import sagwright.quantity.Unit;
import sagwright.screen.theme.RowTable.Column;

/** What the list shows of each order, lengths and weights in both systems side by side. */
final class OrderColumns {
  private OrderColumns() {}

  static List<Column<OrdersView.Row>> all() {
    return List.of(
        Column.words("order", 92, row -> row.order().number()),
        Column.words("who for", 206, row -> CallerFields.whoFor(row.order())),
        Column.words("wood", 132, row -> text(row.order().species())),
        Column.figures("length, mm", 70, 0, row -> row.order().finish().lengthMm()),
        Column.figures("length, in", 70, 2, row -> Unit.INCH.fromBase(lengthMm(row.order()))),
        Column.figures("weight, g", 66, 0, row -> mass(row.order(), Unit.GRAM)),
        Column.figures("weight, oz", 70, 2, row -> mass(row.order(), Unit.OUNCE)),
        Column.figures("asked, N/mm", 74, 2, row -> row.order().ask().stiffnessNPerMm()),
        Column.words("asked as", 114, row -> row.order().remarks().askedAs(0)),
        Column.words("promised", 122, row -> text(row.order().promisedFor())),
        Column.words("blank", 84, OrdersView.Row::blank));
  }

  private static double lengthMm(Order order) {
    return order.finish().lengthMm();
  }

  private static Double mass(Order order, Unit unit) {
    Aim asked = order.ask().massG();
    return asked == null ? null : Double.valueOf(unit.fromBase(asked.value()));
  }

  private static String text(Object value) {
    return value == null ? "" : value.toString();
  }
}
