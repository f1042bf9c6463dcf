package sagwright.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import sagwright.check.CalibrationPoint;
import sagwright.check.CalibrationPoint.Direction;
import sagwright.check.LineCalibration;

/**
 * A calibration: the points on their line, and under it, a thousand times larger, by how much each
 * misses it. Full dots were taken going up, hollow ones coming down.
 */
public final class CalibrationPlot {
  private static final double LEFT = 64;
  private static final double UPPER_SHARE = 0.52;
  private static final double DOT = 9;
  private static final double LEAST_APPLIED = 10;

  private final Style style;

  public CalibrationPlot(Style style) {
    this.style = style;
  }

  public void paint(Graphics2D g, Rectangle2D area, CalibrationScene scene) {
    Style.smooth(g);
    double border = area.getHeight() * UPPER_SHARE;
    upper(
        g, new Rectangle2D.Double(area.getMinX(), area.getMinY(), area.getWidth(), border), scene);
    lower(
        g,
        new Rectangle2D.Double(
            area.getMinX(), area.getMinY() + border, area.getWidth(), area.getHeight() - border),
        scene);
  }

  private QuietPlot.Scale across(CalibrationScene scene) {
    double greatest = LEAST_APPLIED;
    for (CalibrationPoint point : scene.points()) {
      greatest = Math.max(greatest, point.applied());
    }
    return new QuietPlot.Scale(
        -0.02 * greatest, 1.1 * greatest, scene.isLoad() ? "N" : "mm", 80, color(scene));
  }

  private Color color(CalibrationScene scene) {
    return scene.isLoad() ? style.palette().load() : style.palette().deflectionText();
  }

  private void upper(Graphics2D g, Rectangle2D area, CalibrationScene scene) {
    List<CalibrationPoint> points = scene.points();
    double least = points.stream().mapToDouble(p -> p.reading() / 1000).min().orElse(0);
    double most = points.stream().mapToDouble(p -> p.reading() / 1000).max().orElse(1);
    double room = Math.max(0.001, 0.06 * (most - least));
    QuietPlot plot =
        new QuietPlot(
            style,
            area,
            LEFT,
            across(scene),
            new QuietPlot.Scale(
                least - room,
                most + room,
                scene.isLoad() ? "thousand counts" : "thousand steps",
                40,
                style.palette().ink()));
    LineCalibration line = scene.line();
    if (line != null) {
      double[] readings = {least, most};
      double[] applied = {
        line.intercept() + line.slope() * 1000 * least,
        line.intercept() + line.slope() * 1000 * most
      };
      plot.line(applied, readings, Style.HAIR, style.palette().secondInk());
    }
    dots(plot, points, i -> points.get(i).reading() / 1000);
    plot.draw(g);
  }

  /** The residuals in mN or µm, with the scatter about the line. */
  private void lower(Graphics2D g, Rectangle2D area, CalibrationScene scene) {
    LineCalibration line = scene.line();
    double most = line == null ? 10 : 1.6e3 * line.residualStd();
    if (line != null) {
      for (double residual : line.residuals()) {
        most = Math.max(most, 1.15e3 * Math.abs(residual));
      }
    }
    double half = Math.max(1e-3, most);
    QuietPlot plot =
        new QuietPlot(
            style,
            area,
            LEFT,
            across(scene),
            new QuietPlot.Scale(
                -half,
                half,
                scene.isLoad() ? "off the line, mN" : "off the line, µm",
                34,
                style.palette().ink()));
    if (line != null) {
      plot.band(-1e3 * line.residualStd(), 1e3 * line.residualStd(), style.palette().pick());
    }
    plot.level(0, Style.HAIR, style.palette().secondInk());
    if (line != null) {
      dots(plot, scene.points(), i -> 1e3 * line.residuals()[i]);
    }
    plot.draw(g);
    if (line != null) {
      legend(g, plot.inside());
    }
  }

  private void legend(Graphics2D g, Rectangle2D inside) {
    double x = legend(g, inside.getMaxX(), inside.getMinY() - 12, Direction.DOWN);
    legend(g, x - 18, inside.getMinY() - 12, Direction.UP);
  }

  /** One entry that ends at x; where it begins. */
  private double legend(Graphics2D g, double x, double baseline, Direction direction) {
    boolean rising = direction == Direction.UP;
    TextLine words =
        TextLine.of(
            rising ? "going up" : "coming down",
            style.lettering().regular(14),
            style.palette().secondInk());
    words.toRight(g, x, baseline);
    double left = x - words.width(g) - 8 - DOT;
    Ellipse2D ring = new Ellipse2D.Double(left, baseline - 5 - DOT / 2, DOT, DOT);
    g.setColor(rising ? style.palette().brass() : style.palette().paper());
    g.fill(ring);
    g.setColor(style.palette().ink());
    g.setStroke(Style.OUTLINE);
    g.draw(ring);
    return left;
  }

  private void dots(QuietPlot plot, List<CalibrationPoint> points, IntToDoubleFunction y) {
    Shape dot = new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT);
    for (Direction direction : Direction.values()) {
      int[] those =
          IntStream.range(0, points.size())
              .filter(i -> points.get(i).direction() == direction)
              .toArray();
      plot.dots(
          IntStream.of(those).mapToDouble(i -> points.get(i).applied()).toArray(),
          IntStream.of(those).mapToDouble(y).toArray(),
          dot,
          direction == Direction.UP ? style.palette().brass() : style.palette().paper());
    }
  }
}
