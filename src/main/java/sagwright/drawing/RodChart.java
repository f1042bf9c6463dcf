package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.stream.IntStream;
import sagwright.check.ControlChart;
import sagwright.check.ControlLimits;
import sagwright.quantity.Figures;

/**
 * What the bench has shown of its check rod, reading after reading: dots on the plank of their
 * limits, and the moving average as a line. What is out wears a second ring.
 */
public final class RodChart {
  private static final double LEFT = 56;
  private static final double LABELS = 92;
  private static final double DOT = 11;
  private static final double OUT_RING = 19;
  private static final double LEAST_HALF_PERCENT = 0.5;

  private final Style style;

  public RodChart(Style style) {
    this.style = style;
  }

  public void paint(Graphics2D g, Rectangle2D whole, RodChartScene scene) {
    Style.smooth(g);
    Palette p = style.palette();
    Rectangle2D area =
        new Rectangle2D.Double(
            whole.getMinX(), whole.getMinY(), whole.getWidth() - LABELS, whole.getHeight());
    int n = scene.percent().length;
    QuietPlot plot =
        new QuietPlot(
            style,
            area,
            LEFT,
            new QuietPlot.Scale(0.2, Math.max(n, 10) + 0.8, "", 1e6, p.secondInk()),
            upScale(scene));
    ControlChart chart = scene.chart();
    if (chart != null) {
      plot.band(chart.individualLimits().lower(), chart.individualLimits().upper(), p.plank());
      plot.level(chart.individualLimits().centre(), Style.HAIR, p.grain());
      plot.line(places(scene.from(), n), chart.average(), Style.BOLD, p.brassText());
    }
    plot.level(0, Style.DASHED, p.secondInk());
    Ellipse2D dot = new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT);
    plot.dots(
        places(0, scene.from()), Arrays.copyOf(scene.percent(), scene.from()), dot, p.paper());
    plot.dots(
        places(scene.from(), n),
        Arrays.copyOfRange(scene.percent(), scene.from(), n),
        dot,
        p.brass());
    plot.draw(g);
    words(g, plot, scene);
    rings(g, plot, scene);
  }

  private QuietPlot.Scale upScale(RodChartScene scene) {
    double least = -LEAST_HALF_PERCENT;
    double most = LEAST_HALF_PERCENT;
    for (double percent : scene.percent()) {
      least = Math.min(least, percent);
      most = Math.max(most, percent);
    }
    if (scene.chart() != null) {
      least = Math.min(least, scene.chart().individualLimits().lower());
      most = Math.max(most, scene.chart().individualLimits().upper());
    }
    double room = 0.12 * (most - least);
    return new QuietPlot.Scale(
        least - room, most + room, "% stiffer than its steel says", 40, style.palette().ink());
  }

  private static double[] places(int from, int to) {
    return IntStream.range(from, to).mapToDouble(i -> i + 1.0).toArray();
  }

  private void words(Graphics2D g, QuietPlot plot, RodChartScene scene) {
    Palette p = style.palette();
    double right = plot.inside().getMaxX() + 10;
    ControlChart chart = scene.chart();
    if (chart != null) {
      ControlLimits limits = chart.individualLimits();
      label(g, right, plot.yOf(limits.upper()), Figures.rounded(limits.upper(), 2) + " limit");
      label(g, right, plot.yOf(limits.lower()), Figures.rounded(limits.lower(), 2) + " limit");
      double apart = Math.abs(plot.yOf(limits.centre()) - plot.yOf(limits.upper()));
      if (apart > 18) {
        label(g, right, plot.yOf(limits.centre()), Figures.rounded(limits.centre(), 2) + " usual");
      }
    }
    TextLine.of(
            "dots: each test; line: their moving average",
            style.lettering().regular(14),
            p.secondInk())
        .toRight(g, plot.inside().getMaxX(), plot.inside().getMinY() - 12);
    double base = plot.inside().getMaxY() + 20;
    TextLine.of(scene.firstDay(), style.lettering().regular(14), p.secondInk())
        .fromLeft(g, plot.inside().getMinX() + 4, base);
    if (scene.percent().length > 1) {
      TextLine.of(scene.lastDay(), style.lettering().regular(14), p.secondInk())
          .toRight(g, plot.inside().getMaxX(), base);
    }
    if (scene.from() > 0) {
      double x = plot.xOf(scene.from() + 0.5);
      g.setColor(p.secondInk());
      g.setStroke(Style.DOTTED);
      g.draw(new Line2D.Double(x, plot.inside().getMinY(), x, plot.inside().getMaxY()));
      TextLine.of("calibrated", style.lettering().regular(14), p.secondInk())
          .fromLeft(g, x + 6, plot.inside().getMinY() + 12);
    }
  }

  private void label(Graphics2D g, double x, double y, String words) {
    TextLine.of(words, style.lettering().regular(14), style.palette().secondInk())
        .fromLeft(g, x, y + 5);
  }

  private void rings(Graphics2D g, QuietPlot plot, RodChartScene scene) {
    if (scene.chart() == null) {
      return;
    }
    g.setColor(style.palette().deflection());
    g.setStroke(Style.OUTLINE);
    for (int i = scene.from(); i < scene.percent().length; i++) {
      if (!scene.chart().verdictAt(i - scene.from()).isIn()) {
        double x = plot.xOf(i + 1.0);
        double y = plot.yOf(scene.percent()[i]);
        g.draw(new Ellipse2D.Double(x - OUT_RING / 2, y - OUT_RING / 2, OUT_RING, OUT_RING));
      }
    }
  }
}
