package sagwright.screen.theme;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JButton;
import sagwright.drawing.Style;

/** A button that draws itself, in units of zoom 1. */
public abstract class PaintedButton extends JButton implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;

  private double zoom = 1;

  protected PaintedButton(String name, String words) {
    super(words);
    setName(name);
    setContentAreaFilled(false);
    setBorderPainted(false);
    setFocusPainted(false);
  }

  /** Draws the button into an area that starts at 0, 0. */
  protected abstract void paintButton(Graphics2D g, double width, double height);

  /** Its size at zoom 1. */
  protected abstract Dimension sizeAtZoomOne();

  @Override
  public final void zoomTo(double to) {
    zoom = to;
    revalidate();
  }

  @Override
  public final Dimension getPreferredSize() {
    Dimension size = sizeAtZoomOne();
    return new Dimension((int) Math.ceil(size.width * zoom), (int) Math.round(size.height * zoom));
  }

  @Override
  public final Dimension getMinimumSize() {
    return getPreferredSize();
  }

  @Override
  protected final void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      Style.smooth(g);
      g.scale(zoom, zoom);
      paintButton(g, getWidth() / zoom, getHeight() / zoom);
    } finally {
      g.dispose();
    }
  }

  /** The brass ring around what has the focus. */
  protected static void focusRing(Graphics2D g, RoundRectangle2D around) {
    g.setColor(Theme.style().palette().brass());
    g.setStroke(new BasicStroke(2.5f));
    g.draw(around);
  }
}
