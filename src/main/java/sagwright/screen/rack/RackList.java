package sagwright.screen.rack;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import sagwright.quantity.Unit;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.RowTable;
import sagwright.screen.theme.RowTable.Column;
import sagwright.screen.theme.Text;

/** Every blank, one a row; or, where there is none, what to do. */
final class RackList extends JPanel {
  private static final long serialVersionUID = 1L;

  private final RowTable<RackView.Row> table;
  private final JScrollPane scroll;
  private final JPanel empty = new JPanel(new MigLayout("insets 80 0 0 0"));

  RackList(Unit mass, Consumer<RackView.Row> open) {
    super(new BorderLayout());
    setName("rack.list");
    int massDecimals = mass == Unit.GRAM ? 0 : 2;
    table =
        new RowTable<>(
            "rack.table",
            List.of(
                Column.words("tag", 110, RackView.Row::tag),
                Column.words("species", 200, RackView.Row::species),
                Column.words("stage", 190, RackView.Row::stage),
                Column.figures(
                    "mass, " + mass.symbol(),
                    80,
                    massDecimals,
                    r -> r.massG() == null ? null : mass.fromBase(r.massG())),
                Column.figures("stiffness, N/mm", 135, 3, RackView.Row::stiffnessNPerMm),
                Column.figures("modulus, GPa", 125, 2, RackView.Row::modulusGPa),
                Column.words("tested", 122, RackView.Row::tested),
                Column.words("promised", 100, RackView.Row::promisedTo)));
    table.whenOpened(open);
    scroll = Lists.scrolled(table);
    empty.add(Text.heading("No blank yet"), "wrap 10");
    empty.add(
        Text.plain("Ctrl N writes the first one down: its tag, its wood, two diameters or more."),
        "wrap 6");
    empty.add(Text.second("Sheets of other programs come in by the command line: import."));
    add(scroll, BorderLayout.CENTER);
  }

  void show(List<RackView.Row> blanks) {
    remove(blanks.isEmpty() ? scroll : empty);
    add(blanks.isEmpty() ? empty : scroll, BorderLayout.CENTER);
    table.show(blanks, RackView.Row::tag);
    revalidate();
    repaint();
  }

  void filter(String typed) {
    String wanted = typed.trim().toLowerCase(Locale.ROOT);
    table.filter(row -> wanted.isEmpty() || text(row).contains(wanted));
  }

  private static String text(RackView.Row row) {
    return String.join(" ", row.tag(), row.species(), row.stage(), row.promisedTo())
        .toLowerCase(Locale.ROOT);
  }

  RackView.Row selected() {
    return table.selected();
  }

  void move(int by) {
    table.move(by);
  }

  int shown() {
    return table.getRowCount();
  }
}
