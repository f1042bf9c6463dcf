package sagwright.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sagwright.finish.Extra;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.quantity.Figures;

/**
 * Names what lies in a finished shaft, in one row under it, each as near to its place as the others
 * let it. Where there is no room for all, the least telling are left out.
 */
final class FinishMarks {
  private static final double TEXT = 14;

  /** A name this much off its place is led there by a line. */
  private static final double NEAR_PX = 24;

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
    List<Mark> marks = new ArrayList<>(marks(plan, balanceMm));
    Font font = style.lettering().regular(TEXT);
    while (widthOf(g, marks, font) > area.getWidth()) {
      marks.remove(marks.size() - 1);
    }
    marks.sort(Comparator.comparingDouble(Mark::xMm));
    LabelRow.Label[] labels =
        marks.stream()
            .map(m -> new LabelRow.Label(scale.px(m.xMm()), line(m, font).width(g)))
            .toArray(LabelRow.Label[]::new);
    double[] from = LabelRow.begins(labels, area.getMinX(), area.getMaxX());
    for (int i = 0; i < from.length; i++) {
      line(marks.get(i), font).fromLeft(g, from[i], baselinePx);
      lead(g, labels[i], from[i], marks.get(i).xMm(), baselinePx);
    }
  }

  private TextLine line(Mark mark, Font font) {
    return TextLine.of(mark.words(), font, style.palette().ink());
  }

  private double widthOf(Graphics2D g, List<Mark> marks, Font font) {
    double width = 0;
    for (Mark mark : marks) {
      width += line(mark, font).width(g) + LabelRow.GAP;
    }
    return width;
  }

  /** From a name that stands off its place to that place. */
  private void lead(
      Graphics2D g, LabelRow.Label label, double from, double xMm, double baselinePx) {
    if (Math.abs(from + label.width() / 2 - label.atPx()) > NEAR_PX) {
      double end = Math.max(from + 6, Math.min(label.atPx(), from + label.width() - 6));
      g.setColor(style.palette().secondInk());
      g.setStroke(Style.HAIR);
      g.draw(new Line2D.Double(end, baselinePx - 13, label.atPx(), outline.bottomPx(xMm) + 2));
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
