package sagwright.screen.choose;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.Style;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.Zoom;

/** The keys in a line, the list, and under it the picked blanks closely. */
final class ChooseBody extends JPanel implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;
  private static final int KEYS = 44;
  private static final int CLOSELY = 178;
  private static final int CURVES_WIDTH = 450;
  private static final int GAP = 28;

  private final JPanel keys = new JPanel();
  private final QuietButton letGo;
  private final QuietButton takeBack;
  private final JLabel place = Text.note("");
  private final QuietButton lookClosely;
  private final QuietButton weigh;
  private final RowsPicture rows;
  private final SparePicture spare = new SparePicture("choose.spare");
  private final CurvesPicture curves = new CurvesPicture("choose.curves");
  private double zoom = 1;

  /** What the keys and their buttons do beside the desk's own. */
  record BodyKeys(Runnable letGo, Runnable closely, Runnable all, Runnable weigh) {}

  ChooseBody(RowsPicture rows, ChooseActions actions, BodyKeys does) {
    this.rows = rows;
    setLayout(null);
    setName("choose.body");
    keys.setOpaque(false);
    keys.setLayout(new MigLayout("insets 0, gap 6, hidemode 3", "", "[center]"));
    keys.add(quiet("choose.next", "next order", "Page Down", () -> actions.step(1)));
    keys.add(quiet("choose.before", "before", "Page Up", () -> actions.step(-1)));
    keys.add(quiet("choose.all orders", "all orders at once", "A", does.all()));
    lookClosely = quiet("choose.look closely", "closely", "C", does.closely());
    keys.add(lookClosely);
    letGo = quiet("choose.letGo", "pick 1–9, let go", "Esc", does.letGo());
    keys.add(letGo);
    weigh = quiet("choose.weigh", "what ranks", "W", does.weigh());
    keys.add(weigh);
    takeBack = quiet("choose.takeBack", "promise back", "U", actions::takeBack);
    keys.add(takeBack);
    place.setHorizontalAlignment(JLabel.TRAILING);
    for (JComponent part : new JComponent[] {keys, place, rows, spare, curves}) {
      add(part);
    }
  }

  /** These have keys of their own: the focus stays with the list. */
  private static QuietButton quiet(String name, String words, String key, Runnable run) {
    QuietButton button = new QuietButton(name, words, key, run);
    button.setFocusable(false);
    return button;
  }

  void show(ChooseView view, List<String> picked, int focus) {
    rows.show(view, picked, focus);
    List<Row> pickedRows =
        picked.stream()
            .map(tag -> view.servingRow(tag).orElse(null))
            .filter(Objects::nonNull)
            .toList();
    spare.show(view, pickedRows);
    List<Closely> closely =
        picked.stream()
            .map(tag -> view.closely(tag).orElse(null))
            .filter(Objects::nonNull)
            .toList();
    curves.show(closely.size() == picked.size() ? closely : List.of());
    place.setText(view.place());
    takeBack.setVisible(!view.canBeTakenBack().isEmpty());
    boolean isChoice = !view.serving().isEmpty();
    letGo.setVisible(isChoice);
    lookClosely.setVisible(isChoice);
    weigh.setVisible(isChoice);
  }

  @Override
  public void zoomTo(double to) {
    zoom = to;
    revalidate();
  }

  @Override
  public void doLayout() {
    int placeWidth = px(190);
    keys.setBounds(0, -px(4), getWidth() - placeWidth, px(KEYS));
    place.setBounds(getWidth() - placeWidth, -px(4), placeWidth, px(KEYS));
    int closelyTop = getHeight() - px(CLOSELY);
    rows.setBounds(0, px(KEYS - 10), getWidth(), closelyTop - px(KEYS - 6));
    int curvesWidth = px(CURVES_WIDTH);
    spare.setBounds(0, closelyTop + px(4), getWidth() - curvesWidth - px(GAP), px(CLOSELY - 6));
    curves.setBounds(getWidth() - curvesWidth, closelyTop + px(4), curvesWidth, px(CLOSELY - 6));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      g.setColor(Theme.style().palette().hairline());
      g.setStroke(Style.OUTLINE);
      double y = getHeight() - px(CLOSELY);
      g.draw(new Line2D.Double(0, y, getWidth(), y));
    } finally {
      g.dispose();
    }
  }

  private int px(int atZoomOne) {
    return (int) Math.round(atZoomOne * zoom);
  }
}
