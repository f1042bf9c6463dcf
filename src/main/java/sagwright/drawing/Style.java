package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;

/** What every painter draws with: colours and typeface. */
public record Style(Palette palette, Lettering lettering) {
  public static final Stroke HAIR = new BasicStroke(1f);
  public static final Stroke OUTLINE =
      new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  public static final Stroke BOLD = new BasicStroke(2.6f);
  public static final Stroke DOTTED =
      new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 1, new float[] {2, 4}, 0);
  public static final Stroke DASHED =
      new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 1, new float[] {7, 4}, 0);

  /** Smooth edges and true letter widths, whatever the graphics came with. */
  public static void smooth(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }
}
