package sagwright.screen;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import sagwright.drawing.FinishDrawing;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The long drawing of a shaft that lies still, or what is wanting to draw it. */
public final class ShaftPicture extends Picture {
  private static final long serialVersionUID = 1L;

  private transient FinishDrawing.Scene scene;
  private String wanting;

  /**
   * @param wanting what is said while there is nothing to draw
   */
  public ShaftPicture(String name, String wanting) {
    super(name, new Dimension(500, 168));
    this.wanting = wanting;
  }

  public void show(FinishDrawing.Scene next) {
    scene = next;
    repaint();
  }

  /** Nothing to draw, and why. */
  public void showWanting(String words) {
    scene = null;
    wanting = words;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D whole) {
    Rectangle2D area = new Rectangle2D.Double(1, 0, whole.getWidth() - 2, whole.getHeight());
    if (scene != null) {
      new FinishDrawing(Theme.style()).paint(g, area, scene);
      return;
    }
    TextLine.of(wanting, Theme.style().lettering().regular(16), Theme.style().palette().secondInk())
        .fromLeft(g, 1, area.getCenterY());
  }

  @Override
  protected String describe() {
    return scene == null ? wanting : "side view of the shaft";
  }
}
