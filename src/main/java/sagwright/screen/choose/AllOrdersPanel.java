package sagwright.screen.choose;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.quantity.Figures;
import sagwright.screen.choose.ChooseView.AllOrders;
import sagwright.screen.choose.ChooseView.AllOrders.Gets;
import sagwright.screen.choose.ChooseView.AllOrders.Line;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.RowTable;
import sagwright.screen.theme.RowTable.Column;
import sagwright.screen.theme.Text;

/** All open orders at once, each with the blank it gets, beside first come, first served. */
final class AllOrdersPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final RowTable<Line> table;
  private final JLabel sums = Text.strong("");
  private transient ChooseView view;

  /**
   * @param open opens an order
   */
  AllOrdersPanel(Runnable back, Consumer<Line> open) {
    super(new MigLayout("insets 4 0 0 0, gap 0 6", "[grow,fill]", "[][grow,fill][]"));
    setName("choose.all");
    table =
        new RowTable<>(
            "choose.all.table",
            List.of(
                Column.words("order", 150, Line::order),
                Column.words("asks", 170, Line::asks),
                Column.words("all at once", 150, line -> tag(line.atOnce())),
                Column.written("chance, in 100", 90, this::chance, line -> of(line.atOnce())),
                Column.words("first come", 150, line -> tag(line.inTurn())),
                Column.written("chance, in 100", 90, this::chance, line -> of(line.inTurn())),
                Column.words("beside its turn", 190, this::besideItsTurn)));
    table.whenOpened(open);
    QuietButton button = new QuietButton("choose.all.back", "back to the order", "Esc", back);
    button.setFocusable(false);
    sums.setName("choose.all.sums");
    add(sums, "wmin 0, wrap");
    add(Lists.scrolled(table), "grow, hmin 100, wrap");
    add(button, "growx 0, alignx left");
  }

  private static String tag(Gets gets) {
    return gets.tag().isEmpty() ? "–" : gets.tag();
  }

  private static Double of(Gets gets) {
    return gets.tag().isEmpty() ? null : gets.chance();
  }

  private String chance(double chance) {
    return Figures.chancePercent(chance, view.sureness());
  }

  private String besideItsTurn(Line line) {
    double more = 100 * (line.atOnce().chance() - line.inTurn().chance());
    if (line.atOnce().tag().equals(line.inTurn().tag())) {
      return "the same";
    }
    return String.format(Locale.ROOT, "%.0f %s", Math.abs(more), more >= 0 ? "more" : "less");
  }

  void show(ChooseView next) {
    view = next;
    AllOrders all = next.allOrders();
    if (all == null) {
      sums.setText("Pairing all open orders with all free blanks …");
      table.show(List.of(), Line::order);
    } else {
      sums.setText(sums(all));
      table.show(all.lines(), Line::order);
    }
    sums.getAccessibleContext().setAccessibleDescription(sums.getText());
  }

  /** What can be expected of both ways, one line. */
  static String sums(AllOrders all) {
    if (all.lines().isEmpty()) {
      return "No order is open: there is nothing to pair.";
    }
    int orders = all.lines().size();
    return String.format(
        Locale.ROOT,
        "Of %d open %s %.2f can be expected to be met if all are paired at once, %.2f if each takes"
            + " its best in turn.",
        orders,
        orders == 1 ? "order" : "orders",
        all.sumAtOnce(),
        all.sumInTurn());
  }

  /** The marked line; null where there is none. */
  Line marked() {
    return table.selected();
  }

  void focusTable() {
    table.requestFocusInWindow();
  }

  void move(int by) {
    table.move(by);
  }
}
