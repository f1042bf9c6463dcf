package sagwright.screen.theme;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;

/** The one large control of a screen: an ebony butt with a brass ring, its key written on it. */
public final class ButtButton extends PaintedButton {
  private static final long serialVersionUID = 1L;
  private static final Dimension SIZE = new Dimension(272, 60);

  private String keyWords = "";

  public ButtButton(String name) {
    super(name, "");
  }

  /** What it does and which key does it. */
  public void say(String words, String key) {
    if (!words.equals(getText()) || !key.equals(keyWords)) {
      keyWords = key;
      setText(words);
      getAccessibleContext().setAccessibleName(words);
      getAccessibleContext().setAccessibleDescription(key);
      repaint();
    }
  }

  @Override
  protected Dimension sizeAtZoomOne() {
    return SIZE;
  }

  @Override
  protected void paintButton(Graphics2D g, double width, double height) {
    Style style = Theme.style();
    Palette p = style.palette();
    RoundRectangle2D butt = new RoundRectangle2D.Double(1, 1, width - 2, height - 2, 12, 12);
    boolean can = isEnabled();
    g.setColor(can ? p.ebony() : p.paper());
    g.fill(butt);
    g.setColor(can ? p.brass() : p.secondInk());
    g.setStroke(new BasicStroke(1f));
    g.draw(butt);
    g.setColor(p.brass());
    g.fillRect(14, 1, 6, (int) height - 2);
    g.fillRect(24, 1, 2, (int) height - 2);
    if (can && (getModel().isArmed() || getModel().isRollover())) {
      g.fillRect(28, 1, 2, (int) height - 2);
    }
    TextLine key =
        TextLine.of(keyWords, style.lettering().regular(16), can ? p.onEbony() : p.secondInk());
    double room = width - 45 - 20 - key.width(g) - 12;
    double size = 34;
    TextLine words = words(style, size, can);
    while (words.width(g) > room && size > 18) {
      size -= 2;
      words = words(style, size, can);
    }
    words.fromLeft(g, 45, height / 2 + size * 0.36);
    key.toRight(g, width - 20, height / 2 + 8);
    if (isFocusOwner()) {
      focusRing(g, new RoundRectangle2D.Double(2, 2, width - 4, height - 4, 10, 10));
      g.setColor(can ? p.onEbony() : p.ink());
      g.setStroke(new BasicStroke(1f));
      g.draw(new RoundRectangle2D.Double(4.5, 4.5, width - 9, height - 9, 7, 7));
    }
  }

  private TextLine words(Style style, double size, boolean can) {
    Palette p = style.palette();
    return TextLine.of(getText(), style.lettering().bold(size), can ? p.onEbony() : p.secondInk());
  }
}
