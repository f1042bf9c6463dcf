package sagwright.screen;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JToggleButton;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Theme;

/** A screen's name on the rail, with its key under it. */
final class RailEntry extends JToggleButton {
  private static final long serialVersionUID = 1L;

  private final String key;
  private final boolean atFoot;

  RailEntry(String word, String key, boolean atFoot) {
    super(word);
    this.key = key;
    this.atFoot = atFoot;
    setName("rail." + word);
    setContentAreaFilled(false);
    setBorderPainted(false);
    setFocusPainted(false);
    getAccessibleContext().setAccessibleName(word);
    getAccessibleContext().setAccessibleDescription("opens with " + key);
  }

  boolean isAtFoot() {
    return atFoot;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      Style.smooth(g);
      double zoom = getHeight() / 52.0;
      g.scale(zoom, zoom);
      Style style = Theme.style();
      TextLine.of(
              getText(),
              isSelected() ? style.lettering().bold(16) : style.lettering().regular(16),
              isSelected() ? style.palette().ink() : style.palette().secondInk())
          .fromLeft(g, 12, 26);
      TextLine.of(key, style.lettering().regular(14), style.palette().secondInk())
          .fromLeft(g, 12, 44);
      if (isFocusOwner()) {
        g.setColor(style.palette().brass());
        g.setStroke(new BasicStroke(2.5f));
        g.draw(new RoundRectangle2D.Double(3, 2, getWidth() / zoom - 6, 48, 8, 8));
      }
    } finally {
      g.dispose();
    }
  }
}
