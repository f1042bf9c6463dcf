package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import sagwright.beam.ListeningBand;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;

/**
 * A small side view of a shaft on its two supports, with the listening band of one set-up: each
 * stroke in the wood stands for an equal share of the answer.
 */
public final class ListeningStrip {
  private static final int STROKES = 50;
  private static final double SUPPORT_PX = 5;

  private final Style style;

  public ListeningStrip(Style style) {
    this.style = style;
  }

  /**
   * @param setUp on the shaft
   * @param modulusToShearRatio r = E/G of its wood
   */
  public void paint(
      Graphics2D g, Rectangle2D area, Taper shaft, SetUp setUp, double modulusToShearRatio) {
    Palette p = style.palette();
    double pxPerMm = area.getWidth() / shaft.lengthMm();
    double thickest = Math.max(shaft.depthAt(0), shaft.depthAt(shaft.lengthMm()));
    double room = area.getHeight() - SUPPORT_PX - 2;
    LongScale scale =
        new LongScale(
            area.getMinX(), area.getMinY() + 1 + room / 2, pxPerMm, room / thickest / pxPerMm, 1);
    ShaftOutline outline = ShaftOutline.straight(shaft, scale, 0);
    outline.fill(g, p);
    g.setColor(p.ink());
    g.setStroke(new BasicStroke(0.9f));
    for (double x : ListeningBand.of(shaft, setUp, modulusToShearRatio).strokesMm(STROKES)) {
      g.draw(new Line2D.Double(scale.px(x), outline.topPx(x), scale.px(x), outline.bottomPx(x)));
    }
    outline.outline(g, p);
    for (double x : new double[] {setUp.supportAMm(), setUp.supportBMm()}) {
      g.fill(support(scale.px(x), outline.bottomPx(x)));
    }
  }

  private static Path2D support(double x, double y) {
    Path2D support = new Path2D.Double();
    support.moveTo(x, y);
    support.lineTo(x + SUPPORT_PX, y + SUPPORT_PX);
    support.lineTo(x - SUPPORT_PX, y + SUPPORT_PX);
    support.closePath();
    return support;
  }
}
