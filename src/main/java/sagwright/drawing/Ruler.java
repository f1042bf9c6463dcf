package sagwright.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.Arrays;
import sagwright.quantity.Figures;

/**
 * The bench bed as a ruler: a line, ticks each 50 mm, figures each 100 mm, named places in bold.
 */
final class Ruler {
  private static final double CLEAR_PX = 38;

  private final Style style;
  private final LongScale scale;
  private final double endMm;

  Ruler(Style style, LongScale scale, double endMm) {
    this.style = style;
    this.scale = scale;
    this.endMm = endMm;
  }

  /**
   * @param bedPx height of the line
   * @param namedMm places whose millimetres are written in bold whatever they are
   */
  void paint(Graphics2D g, double bedPx, double... namedMm) {
    Palette palette = style.palette();
    g.setColor(palette.ink());
    g.setStroke(Style.OUTLINE);
    g.draw(new Line2D.Double(scale.px(0), bedPx, scale.px(endMm), bedPx));
    g.setStroke(Style.HAIR);
    for (int mm = 0; mm <= endMm; mm += 50) {
      double length = mm % 100 == 0 ? 8 : 4;
      g.draw(new Line2D.Double(scale.px(mm), bedPx, scale.px(mm), bedPx + length));
    }
    double baseline = bedPx + 25;
    Font plain = style.lettering().regular(14);
    Font bold = style.lettering().bold(14);
    TextLine unit = TextLine.of("mm", plain, palette.secondInk());
    double right = scale.px(endMm);
    unit.toRight(g, right, baseline);
    double free = right - unit.width(g) - 8;
    for (double mm : Arrays.stream(namedMm).distinct().toArray()) {
      double x = Math.max(scale.px(0) + 14, Math.min(scale.px(mm), free - 14));
      figure(mm, bold, palette.ink()).centred(g, x, baseline);
    }
    double step = scale.pxPerMm() * 100 < 44 ? 200 : 100;
    for (double mm = 0; mm <= endMm; mm += step) {
      double x = scale.px(mm);
      boolean clear =
          Arrays.stream(namedMm)
                  .allMatch(n -> Math.abs(Math.min(scale.px(n), free - 14) - x) >= CLEAR_PX)
              && x + 16 < free;
      if (clear && mm == 0) {
        figure(mm, plain, palette.secondInk()).fromLeft(g, x, baseline);
      } else if (clear) {
        figure(mm, plain, palette.secondInk()).centred(g, x, baseline);
      }
    }
  }

  private static TextLine figure(double mm, Font font, Color color) {
    return TextLine.of(Figures.rounded(mm, mm == Math.rint(mm) ? 0 : 1), font, color);
  }
}
