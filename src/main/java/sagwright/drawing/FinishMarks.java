package sagwright.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import sagwright.finish.Extra;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.quantity.Figures;

/**
 * Names what lies in a finished shaft, in one row under it, each as near to its place as the others
 * let it: balance point, splice, weights, joint and other extras, ferrule. What finds no room is
 * not named.
 */
final class FinishMarks {
  private static final double TEXT = 14;
  private static final double GAP = 14;

  /** A name this much off its place is led there by a line. */
  private static final double NEAR_PX = 24;

  /** A name further off its place says nothing. */
  private static final double FAR_PX = 220;

  private static final double DIAMOND_PX = 7;

  private final Style style;
  private final LongScale scale;
  private final ShaftOutline outline;

  /**
   * @param scale of the finished shaft
   */
  FinishMarks(Style style, LongScale scale, ShaftOutline outline) {
    this.style = style;
    this.scale = scale;
    this.outline = outline;
  }

  /** A name and the place that it belongs to, the most telling first. */
  private record Mark(String words, double xMm) {}

  /**
   * @param balanceMm from the tip end, NaN where not known
   * @param baselinePx of the row
   */
  void paint(Graphics2D g, Rectangle2D area, FinishPlan plan, double balanceMm, double baselinePx) {
    for (Extra extra : plan.extras()) {
      diamond(g, extra.xMm());
    }
    FreeSpans free = new FreeSpans(area.getMinX() - GAP, area.getMaxX() + GAP);
    for (Mark mark : marks(plan, balanceMm)) {
      name(g, free, mark, baselinePx);
    }
  }

  private static List<Mark> marks(FinishPlan plan, double balanceMm) {
    List<Mark> marks = new ArrayList<>();
    if (Double.isFinite(balanceMm)) {
      double fromButt = plan.lengthMm() - balanceMm;
      marks.add(new Mark("balance " + Figures.rounded(fromButt, 0), balanceMm));
    }
    if (plan.splice() != null) {
      String from = "splice from " + Figures.rounded(plan.splice().fromMm(), 0);
      marks.add(new Mark(from, plan.splice().fromMm()));
    }
    for (Weight weight : plan.weights()) {
      double length = weight.toMm() - weight.fromMm();
      String words =
          "weight "
              + Figures.asTyped(weight.diameterMm())
              + " × "
              + Figures.rounded(length, length == Math.rint(length) ? 0 : 1);
      marks.add(new Mark(words, (weight.fromMm() + weight.toMm()) / 2));
    }
    for (Extra extra : plan.extras()) {
      String name = extra.name() == null ? "extra" : extra.name();
      marks.add(new Mark(name + " " + Figures.rounded(extra.massG(), 0) + " g", extra.xMm()));
    }
    if (plan.ferrule() != null) {
      marks.add(new Mark("ferrule", plan.ferrule().lengthMm() / 2));
    }
    return marks;
  }

  private void name(Graphics2D g, FreeSpans free, Mark mark, double baselinePx) {
    Palette p = style.palette();
    Font font = style.lettering().regular(TEXT);
    TextLine text = TextLine.of(mark.words(), font, p.ink());
    double width = text.width(g);
    double at = scale.px(mark.xMm());
    double wanted = at - width / 2 - GAP;
    double taken = width + 2 * GAP;
    FreeSpans.Span left = free.leftOf(wanted + taken, taken).orElse(null);
    FreeSpans.Span right = free.rightOf(wanted, taken).orElse(null);
    double fromLeft = left == null ? Double.NaN : left.toPx() - taken;
    double fromRight = right == null ? Double.NaN : right.fromPx();
    boolean goesLeft = right == null || (left != null && wanted - fromLeft < fromRight - wanted);
    double from = goesLeft ? fromLeft : fromRight;
    if (!(Math.abs(from - wanted) <= FAR_PX)) {
      return;
    }
    free.take(from, from + taken - GAP);
    text.fromLeft(g, from + GAP, baselinePx);
    if (Math.abs(from - wanted) > NEAR_PX) {
      double end = from < wanted ? from + GAP + width + 3 : from + GAP - 3;
      g.setColor(p.secondInk());
      g.setStroke(Style.HAIR);
      g.draw(new Line2D.Double(end, baselinePx - 5, at, outline.bottomPx(mark.xMm()) + 2));
    }
  }

  /** A point of mass on the centre line. */
  private void diamond(Graphics2D g, double xMm) {
    double x = scale.px(xMm);
    double y = outline.centrePx(xMm);
    Path2D mark = new Path2D.Double();
    mark.moveTo(x - DIAMOND_PX, y);
    mark.lineTo(x, y - DIAMOND_PX);
    mark.lineTo(x + DIAMOND_PX, y);
    mark.lineTo(x, y + DIAMOND_PX);
    mark.closePath();
    Color ink = style.palette().ink();
    g.setColor(style.palette().brass());
    g.fill(mark);
    g.setColor(ink);
    g.setStroke(Style.HAIR);
    g.draw(mark);
  }
}
