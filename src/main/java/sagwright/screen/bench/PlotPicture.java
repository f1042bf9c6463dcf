package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import sagwright.drawing.FittedLine;
import sagwright.drawing.LoadDeflectionPlot;
import sagwright.drawing.LoadDeflectionScene;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.quantity.Figures;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** Load against deflection, and what this run says so far. */
final class PlotPicture extends Picture {
  private static final long serialVersionUID = 1L;

  private transient BenchView view;

  PlotPicture() {
    super("plot", new Dimension(340, 250));
  }

  void show(BenchView next) {
    boolean same =
        view != null
            && view.curves().equals(next.curves())
            && view.phase().isRunning() == next.phase().isRunning();
    view = next;
    if (!same) {
      repaint();
    }
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (view == null) {
      return;
    }
    Style style = Theme.style();
    BenchView.Curves c = view.curves();
    new LoadDeflectionPlot(style)
        .paint(
            g,
            area,
            new LoadDeflectionScene(
                c.runs(), c.line(), c.letOffN(), c.greatestMm(), c.greatestN()));
    if (c.line() != null) {
      beside(g, area, style, c.line());
    } else if (c.runs().isEmpty()) {
      TextLine.of(
              "load against deflection appears here",
              style.lettering().regular(14),
              style.palette().secondInk())
          .centred(g, area.getCenterX() + 10, area.getCenterY());
    }
  }

  private void beside(Graphics2D g, Rectangle2D area, Style style, FittedLine line) {
    Palette p = style.palette();
    double x = area.getMinX() + area.getWidth() * 0.6;
    double y = area.getMinY() + area.getHeight() * 0.55;
    String run = view.phase().isRunning() ? "this run so far" : "this run, as read";
    TextLine.of(run, style.lettering().regular(14), p.secondInk()).fromLeft(g, x, y);
    TextLine.of(
            Figures.rounded(line.stiffnessNPerMm(), view.phase().isRunning() ? 2 : 3),
            style.lettering().bold(24),
            p.ink())
        .after(10, "N/mm", style.lettering().regular(14), p.secondInk())
        .fromLeft(g, x, y + 26);
    String window =
        "fit window "
            + Figures.rounded(line.windowFromN(), 0)
            + " to "
            + Figures.rounded(line.windowToN(), 0)
            + " N";
    TextLine.of(window, style.lettering().regular(14), p.secondInk()).fromLeft(g, x, y + 50);
  }

  @Override
  protected String describe() {
    if (view == null || view.curves().line() == null) {
      return "Load against deflection: no line yet.";
    }
    return "Load against deflection: "
        + Figures.rounded(view.curves().line().stiffnessNPerMm(), 3)
        + " N/mm.";
  }
}
