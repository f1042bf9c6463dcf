package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import sagwright.grade.Ask;
import sagwright.grade.WordScale;
import sagwright.quantity.Figures;

/**
 * The stiffness line: N/mm along it, the ask as a plank of ash with hatched edges, each shaft a dot
 * with its 95 % whisker, the shop's words under it. {@link #paint} draws one shaft's line whole;
 * the pieces serve where many rows share one plank.
 */
public final class StiffnessLine {
  /** Height that {@link #paint} needs. */
  public static final double HEIGHT = 92;

  private static final double DOT = 7;
  private static final double HATCH_PX = 10;

  private final Style style;

  public StiffnessLine(Style style) {
    this.style = style;
  }

  /**
   * @param ask null for none
   * @param mark null for none
   * @param words null where the scale does not hold: at another than its set-up
   */
  public void paint(Graphics2D g, Rectangle2D area, Ask ask, StiffnessMark mark, WordScale words) {
    Style.smooth(g);
    StiffnessScale scale =
        StiffnessScale.around(
            ask, mark == null ? List.of() : List.of(mark), area.getMinX(), area.getMaxX());
    double y = area.getMinY() + 22;
    if (ask != null) {
      plank(g, scale, ask, y - 21, y + 21);
    }
    axis(g, scale, y);
    if (mark != null) {
      mark(g, scale, mark, y);
    }
    ticks(g, scale, y, y + 39);
    if (words != null) {
      words(g, scale, words, mark == null ? Double.NaN : mark.stiffnessNPerMm(), y + 61);
    }
  }

  /** The ask, from one height to another. */
  public void plank(Graphics2D g, StiffnessScale scale, Ask ask, double topPx, double bottomPx) {
    Palette p = style.palette();
    double left = scale.pxWithin(ask.lowestNPerMm());
    double right = scale.pxWithin(ask.highestNPerMm());
    Rectangle2D plank = new Rectangle2D.Double(left, topPx, right - left, bottomPx - topPx);
    g.setColor(p.plank());
    g.fill(plank);
    g.setColor(p.ash());
    g.setStroke(Style.HAIR);
    int grains = (int) Math.max(2, (right - left - 2 * HATCH_PX) / 14);
    for (int i = 1; i < grains; i++) {
      double x = left + HATCH_PX + (right - left - 2 * HATCH_PX) * i / grains;
      g.draw(new Line2D.Double(x, topPx, x, bottomPx));
    }
    double hatch = Math.min(HATCH_PX, (right - left) / 3);
    hatch(g, new Rectangle2D.Double(left, topPx, hatch, bottomPx - topPx), true);
    hatch(g, new Rectangle2D.Double(right - hatch, topPx, hatch, bottomPx - topPx), false);
    g.setColor(p.ink());
    g.setStroke(new BasicStroke(1.8f));
    g.draw(new Line2D.Double(left, topPx, left, bottomPx));
    g.draw(new Line2D.Double(right, topPx, right, bottomPx));
  }

  public void axis(Graphics2D g, StiffnessScale scale, double yPx) {
    g.setColor(style.palette().ink());
    g.setStroke(Style.HAIR);
    g.draw(new Line2D.Double(scale.leftPx(), yPx, scale.rightPx(), yPx));
  }

  public void mark(Graphics2D g, StiffnessScale scale, StiffnessMark mark, double yPx) {
    Palette p = style.palette();
    double x = scale.pxWithin(mark.stiffnessNPerMm());
    double from = scale.pxWithin(mark.stiffnessNPerMm() - mark.halfWidth95NPerMm());
    double to = scale.pxWithin(mark.stiffnessNPerMm() + mark.halfWidth95NPerMm());
    g.setColor(mark.hollow() ? p.secondInk() : p.ink());
    g.setStroke(new BasicStroke(mark.hollow() ? 1.6f : 3f));
    g.draw(new Line2D.Double(from, yPx, to, yPx));
    g.draw(new Line2D.Double(from, yPx - 8, from, yPx + 8));
    g.draw(new Line2D.Double(to, yPx - 8, to, yPx + 8));
    Ellipse2D dot = new Ellipse2D.Double(x - DOT, yPx - DOT, 2 * DOT, 2 * DOT);
    g.setColor(mark.hollow() ? p.paper() : p.brass());
    g.fill(dot);
    g.setColor(mark.hollow() ? p.secondInk() : p.ink());
    g.setStroke(new BasicStroke(2f));
    g.draw(dot);
  }

  /** Ticks on the line and their figures at a baseline. */
  public void ticks(Graphics2D g, StiffnessScale scale, double yPx, double baselinePx) {
    Palette p = style.palette();
    Font font = style.lettering().regular(14);
    double step = scale.step();
    int decimals = Ticks.decimals(step);
    g.setStroke(Style.HAIR);
    for (long i = (long) Math.ceil(scale.fromNPerMm() / step); i * step <= scale.toNPerMm(); i++) {
      double x = scale.px(i * step);
      g.setColor(p.ink());
      g.draw(new Line2D.Double(x, yPx - 4, x, yPx + 4));
      TextLine figure = TextLine.of(Figures.rounded(i * step, decimals), font, p.secondInk());
      double half = figure.width(g) / 2;
      if (x - half >= scale.leftPx() - 1 && x + half <= scale.rightPx() + 1) {
        figure.centred(g, x, baselinePx);
      }
    }
  }

  /** The shop's words, each centred in what is seen of its range; the one that holds is bold. */
  public void words(
      Graphics2D g, StiffnessScale scale, WordScale words, double heldNPerMm, double baselinePx) {
    Palette p = style.palette();
    String held = Double.isNaN(heldNPerMm) ? "" : words.wordFor(heldNPerMm);
    for (int i = 0; i < words.words().size(); i++) {
      String word = words.words().get(i);
      boolean first = i == 0;
      boolean last = i == words.words().size() - 1;
      double from = first ? scale.leftPx() : scale.pxWithin(words.bordersNPerMm().get(i));
      double to = last ? scale.rightPx() : scale.pxWithin(words.bordersNPerMm().get(i + 1));
      boolean bold = word.equals(held);
      TextLine text =
          TextLine.of(
              word,
              bold ? style.lettering().bold(14) : style.lettering().regular(14),
              bold ? p.ink() : p.secondInk());
      if (text.width(g) + 4 <= to - from) {
        text.centred(g, (from + to) / 2, baselinePx);
      }
      if (from > scale.leftPx() && from < scale.rightPx()) {
        g.setColor(p.secondInk());
        g.setStroke(Style.HAIR);
        g.draw(new Line2D.Double(from, baselinePx - 11, from, baselinePx + 2));
      }
    }
  }

  private void hatch(Graphics2D g, Rectangle2D edge, boolean rising) {
    Shape clip = g.getClip();
    g.clip(edge);
    g.setColor(style.palette().ink());
    g.setStroke(new BasicStroke(0.8f));
    double lean = rising ? -edge.getWidth() : edge.getWidth();
    for (double y = edge.getMinY() - 12; y < edge.getMaxY() + 12; y += 4.5) {
      g.draw(new Line2D.Double(edge.getMinX(), y, edge.getMaxX(), y + lean));
    }
    g.setClip(clip);
  }
}
