package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;

/**
 * How shafts that are compared closely are told apart: by the kind of their line, the same in the
 * list, over the taper and on the plot; never by colour.
 */
public enum PickLine {
  SOLID,
  DASHED(7, 4),
  DOTTED(2, 3),
  DASH_DOT(11, 3, 2, 3);

  /** No more than so many lines are told apart at a glance. */
  public static final int MOST = values().length;

  private final float[] dashes;

  PickLine(float... dashes) {
    this.dashes = dashes;
  }

  /** The line of a pick by its place, 0 for the first. */
  public static PickLine of(int place) {
    return values()[place];
  }

  public Stroke stroke(double width) {
    if (dashes.length == 0) {
      return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 1, dashes, 0);
  }

  /** A piece of the line, for a list or a key. */
  public void sample(Graphics2D g, Style style, double xPx, double yPx, double lengthPx) {
    g.setColor(style.palette().ink());
    g.setStroke(stroke(3));
    g.draw(new Line2D.Double(xPx, yPx, xPx + lengthPx, yPx));
  }
}
