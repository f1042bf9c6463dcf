package sagwright.screen.theme;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JButton;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;

/** A small action: its words underlined, its key behind them. 44 high, so that a glove finds it. */
public final class QuietButton extends JButton implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;
  private static final int HEIGHT = 44;
  private static final double SIZE = 14;

  private final String key;
  private double zoom = 1;

  /**
   * @param key as written behind the words; empty for none
   */
  public QuietButton(String name, String words, String key) {
    super(words);
    this.key = key;
    setName(name);
    setContentAreaFilled(false);
    setBorderPainted(false);
    setFocusPainted(false);
    getAccessibleContext().setAccessibleName(words);
    getAccessibleContext().setAccessibleDescription(key.isEmpty() ? words : "key " + key);
  }

  @Override
  public void zoomTo(double to) {
    zoom = to;
    revalidate();
  }

  @Override
  public Dimension getPreferredSize() {
    FontRenderContext context = new FontRenderContext(null, true, true);
    Style style = Theme.style();
    double width =
        style.lettering().semiBold(SIZE).getStringBounds(getText(), context).getWidth()
            + style.lettering().bold(SIZE).getStringBounds(key, context).getWidth()
            + (key.isEmpty() ? 12 : 20);
    return new Dimension((int) Math.ceil(width * zoom), (int) Math.round(HEIGHT * zoom));
  }

  @Override
  public Dimension getMinimumSize() {
    return getPreferredSize();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      Style.smooth(g);
      g.scale(zoom, zoom);
      Style style = Theme.style();
      Palette p = style.palette();
      double height = getHeight() / zoom;
      double baseline = height / 2 + 5;
      TextLine words =
          TextLine.of(
              getText(), style.lettering().semiBold(SIZE), isEnabled() ? p.ink() : p.secondInk());
      double end = words.fromLeft(g, 6, baseline);
      g.setColor(getModel().isRollover() ? p.brass() : p.secondInk());
      g.setStroke(Style.HAIR);
      g.draw(new Line2D.Double(6, baseline + 4, end, baseline + 4));
      TextLine.of(key, style.lettering().bold(SIZE), p.brassText()).fromLeft(g, end + 8, baseline);
      if (isFocusOwner()) {
        g.setColor(p.brass());
        g.setStroke(new BasicStroke(2.5f));
        g.draw(new RoundRectangle2D.Double(1.5, 4, getWidth() / zoom - 3, height - 8, 8, 8));
      }
    } finally {
      g.dispose();
    }
  }
}
