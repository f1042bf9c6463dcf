package sagwright.screen.orders;

import java.awt.CardLayout;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.theme.ColumnsLayout;
import sagwright.screen.theme.Lists;

/** The leaves of the order form, one of them open: columns side by side on each. */
final class OrderLeaves extends JPanel {
  private static final long serialVersionUID = 1L;

  /** As the page's head names them. */
  private static final List<String> NAMES =
      List.of("shape and ask", "tip and butt", "places and tapers");

  /** What a person may not guess of each. */
  private static final List<String> HINTS =
      List.of(
          "58 in, 18½ oz, 147.3 cm.  Stiffness: a figure, a word, as 25-020 + 10 %; arrows choose.",
          "Splice: from the butt.  A wood of the table brings its density and modulus; a metal its"
              + " density.",
          "What is typed here goes before the shop's usual places.");

  /** The leaf with the kept tapers, counted from 0. */
  static final int TAPERS = 2;

  private final CardLayout cards = new CardLayout();
  private int open;

  OrderLeaves() {
    setLayout(cards);
  }

  /**
   * One under the other; the last takes the room that is left, and gives way where there is none.
   */
  static JPanel stack(JComponent upper, JComponent lower) {
    JPanel stack = new JPanel(new MigLayout("insets 0, gap 0 2, wrap", "[grow,fill]", "[][grow]"));
    stack.add(upper, "wmin 0");
    stack.add(lower, "wmin 0, hmin 0, grow");
    return stack;
  }

  /** One under the other; the first takes the room that is left, and gives way first. */
  static JPanel over(JComponent upper, JComponent lower) {
    JPanel over = new JPanel(new MigLayout("insets 0, gap 0 8, wrap", "[grow,fill]", "[grow][]"));
    over.add(upper, "wmin 0, hmin 0, grow");
    over.add(lower, "wmin 0, grow");
    return over;
  }

  /** One under the other, each as high as it is. */
  static JPanel column(JComponent... parts) {
    JPanel column = new JPanel(new MigLayout("insets 0, gap 0 4, wrap", "[grow,fill]", ""));
    for (JComponent part : parts) {
      column.add(part, "wmin 0");
    }
    return column;
  }

  void addShape(JComponent shape, JComponent ask, JComponent caller) {
    leaf(new ColumnsLayout(0.018, 28.6, 45.4, 26), shape, ask, caller);
  }

  void addFitting(JComponent fitting, JComponent weights) {
    leaf(new ColumnsLayout(0.02, 63, 37), fitting, weights);
  }

  void addPlaces(JComponent places, JComponent tapers) {
    leaf(new ColumnsLayout(0.03, 43, 54), Lists.scrolled(places), tapers);
  }

  private void leaf(ColumnsLayout columns, JComponent... parts) {
    JPanel leaf = new JPanel(columns);
    for (JComponent part : parts) {
      leaf.add(part);
    }
    add(leaf, NAMES.get(getComponentCount()));
  }

  /** Turns to a leaf, round and round. */
  void show(int leaf) {
    open = Math.floorMod(leaf, NAMES.size());
    cards.show(this, NAMES.get(open));
  }

  /**
   * Turns to the first leaf that takes the focus; where none does, the open one stays.
   *
   * @param takesFocus for each leaf
   */
  void turnToWhere(List<BooleanSupplier> takesFocus) {
    int before = open;
    for (int leaf = 0; leaf < takesFocus.size(); leaf++) {
      show(leaf); // what is not shown takes no focus
      if (takesFocus.get(leaf).getAsBoolean()) {
        return;
      }
    }
    show(before);
  }

  /** Which is open, counted from 0. */
  int open() {
    return open;
  }

  /** Which of them is open, for the page's head. */
  String name() {
    return (open + 1) + " of " + NAMES.size() + ": " + NAMES.get(open);
  }

  String hint() {
    return HINTS.get(open);
  }
}
