package sagwright.screen.theme;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import sagwright.drawing.Style;

/**
 * A component that shows a painter's picture, drawn in units of zoom 1. What it shows is said in
 * words by {@link #describe}, for whoever does not see it.
 */
public abstract class Picture extends JComponent implements Zoom.Zoomed, Accessible {
  private static final long serialVersionUID = 1L;

  private final Dimension least;
  private double zoom = 1;

  /**
   * @param least size at zoom 1 below which the picture is not whole
   */
  protected Picture(String name, Dimension least) {
    this.least = new Dimension(least);
    setName(name);
    setOpaque(false);
  }

  /** Draws into an area that starts at 0, 0. */
  protected abstract void paint(Graphics2D g, Rectangle2D area);

  /** What is seen, in words. */
  protected abstract String describe();

  @Override
  public final void zoomTo(double to) {
    zoom = to;
    revalidate();
    repaint();
  }

  /** A place of the component in the picture's own units. */
  protected final double inPicture(int px) {
    return px / zoom;
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension((int) (least.width * zoom), (int) (least.height * zoom));
  }

  @Override
  public Dimension getPreferredSize() {
    return getMinimumSize();
  }

  @Override
  protected final void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      Style.smooth(g);
      g.scale(zoom, zoom);
      paint(g, new Rectangle2D.Double(0, 0, getWidth() / zoom, getHeight() / zoom));
    } finally {
      g.dispose();
    }
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1L;

            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.CANVAS;
            }

            @Override
            public String getAccessibleDescription() {
              return describe();
            }
          };
    }
    return accessibleContext;
  }
}
