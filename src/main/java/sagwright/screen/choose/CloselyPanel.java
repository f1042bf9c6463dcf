package sagwright.screen.choose;

import java.util.List;
import java.util.Objects;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.theme.QuietButton;

/** Two to four picked blanks side by side: wood to spare, curves, figures, budgets, notes. */
final class CloselyPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final SparePicture spare = new SparePicture("closely.spare");
  private final CurvesPicture curves = new CurvesPicture("closely.curves");
  private final SideBySidePicture sideBySide = new SideBySidePicture();

  CloselyPanel(Runnable back) {
    super(
        new MigLayout(
            "insets 4 0 0 0, gap 28 6", "[grow 62,fill][grow 38,fill]", "[fill][grow,fill][]"));
    setName("choose.closely");
    sideBySide.setFocusable(true);
    add(spare, "grow, wmin 0, hmin 180");
    add(curves, "grow, wmin 0, hmin 180, wrap");
    add(sideBySide, "span 2, grow, wrap");
    QuietButton button = new QuietButton("choose.closely.back", "back to all blanks", "Esc", back);
    button.setFocusable(false);
    add(button, "span 2, growx 0, alignx left");
  }

  /** Nothing is typed here, and no other page is meant. */
  void focusPicture() {
    sideBySide.requestFocusInWindow();
  }

  void show(ChooseView view, List<String> picked) {
    List<Row> rows =
        picked.stream()
            .map(tag -> view.servingRow(tag).orElse(null))
            .filter(Objects::nonNull)
            .toList();
    List<Closely> closely =
        picked.stream()
            .map(tag -> view.closely(tag).orElse(null))
            .filter(Objects::nonNull)
            .toList();
    spare.show(view, rows);
    curves.show(closely.size() == picked.size() ? closely : List.of());
    sideBySide.show(view, rows, closely);
  }
}
