package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** The arrow that presses down on a shaft. */
final class LoadArrow {
  private LoadArrow() {}

  /**
   * @param tipPx where its point stands
   * @param headPx half the width of its head
   */
  static void paint(
      Graphics2D g, Palette palette, double xPx, double fromPx, double tipPx, double headPx) {
    g.setColor(palette.load());
    g.setStroke(new BasicStroke((float) (headPx * 0.44)));
    g.draw(new Line2D.Double(xPx, fromPx, xPx, tipPx - 1.6 * headPx));
    Path2D head = new Path2D.Double();
    head.moveTo(xPx - headPx, tipPx - 1.85 * headPx);
    head.lineTo(xPx + headPx, tipPx - 1.85 * headPx);
    head.lineTo(xPx, tipPx);
    head.closePath();
    g.fill(head);
  }
}
