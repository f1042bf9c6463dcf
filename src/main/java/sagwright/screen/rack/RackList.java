package sagwright.screen.rack;

import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.quantity.Unit;
import sagwright.screen.ShopUnits;
import sagwright.screen.WoodWords;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.RowTable;
import sagwright.screen.theme.RowTable.Column;
import sagwright.screen.theme.Text;

/** Every blank, one a row; or, where there is none, what to do. */
final class RackList extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Typed among the words of the filter it shows what is no more. */
  private static final String ENDED = "ended";

  private static final String EMPTY = "empty";
  private static final String LISTED = "listed";

  private final RowTable<RackView.Row> table;
  private boolean showsEnded;
  private final CardLayout cards = new CardLayout(); // what is not seen changes its theme too

  RackList(ShopUnits units, Consumer<RackView.Row> open) {
    setLayout(cards);
    setName("rack.list");
    int massDecimals = units.mass() == Unit.GRAM ? 0 : 2;
    table =
        new RowTable<>(
            "rack.table",
            List.of(
                Column.words("tag", 104, RackView.Row::tag),
                Column.words("species", 132, RackView.Row::species),
                Column.words("stage", 140, RackList::stage),
                Column.figures(
                    "mass, " + units.mass().symbol(),
                    66,
                    massDecimals,
                    r -> r.massG() == null ? null : units.mass().fromBase(r.massG())),
                Column.figures("stiffness, N/mm", 84, 3, RackView.Row::stiffnessNPerMm),
                Column.figures("modulus, GPa", 80, 2, RackView.Row::modulusGPa),
                Column.figures(
                    "grain, " + WoodWords.per(units),
                    70,
                    0,
                    r -> WoodWords.lines(r.grain(), units)),
                Column.words("run-out", 88, r -> WoodWords.runOutBriefly(r.grain())),
                Column.words("seasoning", 122, RackView.Row::seasoning),
                Column.words("tested", 116, RackView.Row::tested),
                Column.words("promised", 94, RackView.Row::promisedTo)));
    table.whenOpened(open);
    filter("");
    JPanel empty = new JPanel(new MigLayout("insets 80 0 0 0"));
    empty.add(Text.heading("No blank yet"), "wrap 10");
    empty.add(
        Text.plain("Ctrl N writes the first one down: its tag, its wood, two diameters or more."),
        "wrap 6");
    empty.add(Text.second("Sheets of other programs come in by the command line: import."));
    add(empty, EMPTY);
    add(Lists.scrolled(table), LISTED);
  }

  private static String stage(RackView.Row row) {
    return row.isEnded() ? row.endedWhy() : row.stage();
  }

  void show(List<RackView.Row> blanks) {
    cards.show(this, blanks.isEmpty() ? EMPTY : LISTED);
    table.show(blanks, RackView.Row::tag);
  }

  /**
   * Shows the blanks of which every word that is typed is said. Those that are no more are shown
   * where {@value #ENDED} is one of the words, and then alone.
   */
  void filter(String typed) {
    List<String> wanted =
        new ArrayList<>(List.of(typed.trim().toLowerCase(Locale.ROOT).split("\\s+")));
    showsEnded = wanted.remove(ENDED);
    boolean ended = showsEnded;
    table.filter(row -> row.isEnded() == ended && wanted.stream().allMatch(row.words()::contains));
  }

  /** How many are seen, of how many; and how many are no more. */
  String count(List<RackView.Row> blanks) {
    long ended = blanks.stream().filter(RackView.Row::isEnded).count();
    if (showsEnded) {
      return shown() + " of " + ended + " ended";
    }
    String free = shown() + " of " + (blanks.size() - ended);
    return ended == 0 ? free : free + ", and " + ended + " ended";
  }

  /** Marks the blank of a tag, where it is seen. */
  void select(String tag) {
    table.select(row -> row.tag().equals(tag));
  }

  /** Another row is marked, or none. */
  void whenMarked(Runnable marked) {
    table.getSelectionModel().addListSelectionListener(e -> marked.run());
  }

  RackView.Row selected() {
    return table.selected();
  }

  void move(int by) {
    table.move(by);
  }

  void sortByNext(int by) {
    table.sortByNext(by);
  }

  void sortTheOtherWay() {
    table.sortTheOtherWay();
  }

  int shown() {
    return table.getRowCount();
  }
}
