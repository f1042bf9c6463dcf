package sagwright.screen.theme;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;

/** A small action: its words underlined, its key behind them. 44 high, so that a glove finds it. */
public final class QuietButton extends PaintedButton {
  private static final long serialVersionUID = 1L;
  private static final int HEIGHT = 44;
  private static final double SIZE = 14;

  private final String key;

  /**
   * @param key as written behind the words; empty for none
   * @param does what the key does, too
   */
  public QuietButton(String name, String words, String key, Runnable does) {
    super(name, words);
    this.key = key;
    addActionListener(e -> does.run());
    getAccessibleContext().setAccessibleName(words);
    getAccessibleContext().setAccessibleDescription(key.isEmpty() ? words : "key " + key);
  }

  @Override
  protected Dimension sizeAtZoomOne() {
    FontRenderContext context = new FontRenderContext(null, true, true);
    Style style = Theme.style();
    double width =
        style.lettering().semiBold(SIZE).getStringBounds(getText(), context).getWidth()
            + style.lettering().bold(SIZE).getStringBounds(key, context).getWidth()
            + (key.isEmpty() ? 12 : 20);
    return new Dimension((int) Math.ceil(width), HEIGHT);
  }

  @Override
  protected void paintButton(Graphics2D g, double width, double height) {
    Style style = Theme.style();
    Palette p = style.palette();
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
      focusRing(g, new RoundRectangle2D.Double(1.5, 4, width - 3, height - 8, 8, 8));
    }
  }
}
