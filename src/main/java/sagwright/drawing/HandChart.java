package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.stream.IntStream;
import sagwright.quantity.Figures;

/**
 * How a hand learns: guess after guess as dots, how far off each was, on the plank that nine of the
 * last ten keep to.
 */
public final class HandChart {
  private static final double LEFT = 56;
  private static final double DOT = 11;
  private static final double LEAST_HALF_PERCENT = 20;
  private static final int LEAST_PLACES = 10;

  private final Style style;

  public HandChart(Style style) {
    this.style = style;
  }

  public void paint(Graphics2D g, Rectangle2D area, HandChartScene scene) {
    Style.smooth(g);
    Palette p = style.palette();
    int n = scene.offPercent().length;
    double most = LEAST_HALF_PERCENT;
    for (double off : scene.offPercent()) {
      most = Math.max(most, 1.12 * Math.abs(off));
    }
    QuietPlot plot =
        new QuietPlot(
            style,
            area,
            LEFT,
            new QuietPlot.Scale(0.2, Math.max(n, LEAST_PLACES) + 0.8, "", 1e6, p.secondInk()),
            new QuietPlot.Scale(-most, most, "% guessed too stiff", 40, p.ink()));
    if (!Double.isNaN(scene.withinPercent())) {
      double from = n - scene.lastOf() + 0.5;
      plot.area(
          new Rectangle2D.Double(
              from, -scene.withinPercent(), n + 0.5 - from, 2 * scene.withinPercent()),
          p.plank(),
          p.plank());
    }
    plot.level(0, Style.DASHED, p.secondInk());
    plot.dots(
        IntStream.range(0, n).mapToDouble(i -> i + 1.0).toArray(),
        scene.offPercent(),
        new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT),
        p.brass());
    plot.draw(g);
    words(g, plot, scene);
  }

  private void words(Graphics2D g, QuietPlot plot, HandChartScene scene) {
    Palette p = style.palette();
    int n = scene.offPercent().length;
    double right = plot.inside().getMaxX();
    String key = "dots: each guess, the newest at the right";
    if (!Double.isNaN(scene.withinPercent())) {
      key +=
          "; plank: within "
              + Figures.rounded(scene.withinPercent(), 0)
              + " %, as nine of the last ten were";
    }
    TextLine.of(key, style.lettering().regular(14), p.secondInk())
        .toRight(g, right, plot.inside().getMinY() - 12);
    double base = plot.inside().getMaxY() + 20;
    TextLine.of(scene.firstDay(), style.lettering().regular(14), p.secondInk())
        .fromLeft(g, plot.inside().getMinX() + 4, base);
    if (n > 1) {
      TextLine.of(scene.lastDay(), style.lettering().regular(14), p.secondInk())
          .toRight(g, n < LEAST_PLACES ? plot.xOf(n) + 30 : right, base);
    }
  }
}
