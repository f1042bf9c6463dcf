package sagwright.screen;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.PaintedButton;
import sagwright.screen.theme.Theme;

/** A screen's name on the rail, with its key under it; bold while the screen is open. */
final class RailEntry extends PaintedButton {
  private static final long serialVersionUID = 1L;
  private static final Dimension SIZE = new Dimension(98, 52);

  private final String key;
  private final boolean atFoot;
  private boolean open;

  RailEntry(String word, String key, boolean atFoot) {
    super("rail." + word, word);
    this.key = key;
    this.atFoot = atFoot;
    getAccessibleContext().setAccessibleName(word);
    open(false);
  }

  boolean isAtFoot() {
    return atFoot;
  }

  void open(boolean isOpen) {
    open = isOpen;
    getAccessibleContext().setAccessibleDescription(open ? "open" : "opens with " + key);
    repaint();
  }

  @Override
  protected Dimension sizeAtZoomOne() {
    return SIZE;
  }

  @Override
  protected void paintButton(Graphics2D g, double width, double height) {
    Style style = Theme.style();
    TextLine.of(
            getText(),
            open ? style.lettering().bold(16) : style.lettering().regular(16),
            open ? style.palette().ink() : style.palette().secondInk())
        .fromLeft(g, 12, 26);
    TextLine.of(key, style.lettering().regular(14), style.palette().secondInk())
        .fromLeft(g, 12, 44);
    if (isFocusOwner()) {
      focusRing(g, new RoundRectangle2D.Double(3, 2, width - 6, 48, 8, 8));
    }
  }
}
