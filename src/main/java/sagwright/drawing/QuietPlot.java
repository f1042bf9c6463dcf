package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;
import sagwright.quantity.Figures;

/** Two axes on bare paper, and on them lines and dots in the order in which they are added. */
final class QuietPlot {
  static final double TOP = 26;
  static final double RIGHT = 12;
  private static final double BOTTOM = 30;

  /**
   * An axis.
   *
   * @param unit written at its end, where no figure is written then
   * @param tickPx room between two figures
   */
  record Scale(double from, double to, String unit, double tickPx, Color color) {}

  private final Style style;
  private final Rectangle2D area;
  private final Rectangle2D inside;
  private final Scale across;
  private final Scale up;
  private final XYPlot plot;
  private int series;

  /**
   * @param left room for the figures of the upright axis
   */
  QuietPlot(Style style, Rectangle2D area, double left, Scale across, Scale up) {
    this.style = style;
    this.area = area;
    this.across = across;
    this.up = up;
    this.inside =
        new Rectangle2D.Double(
            area.getMinX() + left,
            area.getMinY() + TOP,
            area.getWidth() - left - RIGHT,
            area.getHeight() - TOP - BOTTOM);
    plot = new XYPlot(null, axis(across, inside.getWidth()), axis(up, inside.getHeight()), null);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    plot.setFixedDomainAxisSpace(space(0, BOTTOM));
    plot.setFixedRangeAxisSpace(space(left, 0));
    plot.setInsets(new RectangleInsets(TOP, 0, 0, RIGHT));
    add(new double[0], new double[0], new XYLineAndShapeRenderer());
  }

  private NumberAxis axis(Scale scale, double lengthPx) {
    NumberAxis axis = new NumberAxis();
    axis.setRange(scale.from(), scale.to());
    double range = scale.to() - scale.from();
    double step = Ticks.step(range * scale.tickPx() / lengthPx * 0.72);
    double unitBegins = scale.to() - (scale.equals(across) ? 0.1 * range : 0);
    axis.setTickUnit(
        new NumberTickUnit(step) {
          private static final long serialVersionUID = 1L;

          @Override
          public String valueToString(double value) {
            return value > unitBegins ? "" : Figures.rounded(value, Ticks.decimals(step));
          }
        });
    axis.setTickLabelFont(style.lettering().semiBold(14));
    axis.setTickLabelPaint(scale.color());
    axis.setTickMarkPaint(style.palette().ink());
    axis.setTickMarkOutsideLength(6f);
    axis.setAxisLinePaint(style.palette().ink());
    axis.setAxisLineStroke(new BasicStroke(1.3f));
    return axis;
  }

  private static AxisSpace space(double left, double bottom) {
    AxisSpace space = new AxisSpace();
    space.setLeft(left);
    space.setBottom(bottom);
    return space;
  }

  /** A line from point to point. */
  void line(double[] x, double[] y, Stroke stroke, Color color) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    renderer.setSeriesPaint(0, color);
    renderer.setSeriesStroke(0, stroke);
    add(x, y, renderer);
  }

  /** Points, each with an outline. */
  void dots(double[] x, double[] y, Shape shape, Color fill) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setSeriesShape(0, shape);
    renderer.setSeriesPaint(0, style.palette().ink());
    renderer.setUseFillPaint(true);
    renderer.setSeriesFillPaint(0, fill);
    renderer.setUseOutlinePaint(true);
    renderer.setSeriesOutlinePaint(0, style.palette().ink());
    renderer.setSeriesOutlineStroke(0, Style.OUTLINE);
    add(x, y, renderer);
  }

  /** Points without an outline, as many as there are. */
  void specks(double[] x, double[] y, double px, Color color) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setSeriesPaint(0, color);
    renderer.setSeriesShape(0, new Ellipse2D.Double(-px / 2, -px / 2, px, px));
    add(x, y, renderer);
  }

  /** A filled shape in the axes' own units, behind all that is added later. */
  void area(Shape shape, Color outline, Color fill) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
    renderer.addAnnotation(
        new XYShapeAnnotation(shape, Style.HAIR, outline, fill), Layer.BACKGROUND);
    add(new double[0], new double[0], renderer);
  }

  /** A level that is drawn across the whole plot, behind all else. */
  void level(double at, Stroke stroke, Color color) {
    plot.addRangeMarker(new ValueMarker(at, color, stroke), Layer.BACKGROUND);
  }

  /** A band across the whole plot, behind all else. */
  void band(double from, double to, Color fill) {
    IntervalMarker band = new IntervalMarker(from, to, fill);
    band.setAlpha(1f);
    plot.addRangeMarker(band, Layer.BACKGROUND);
  }

  private void add(double[] x, double[] y, XYLineAndShapeRenderer renderer) {
    DefaultXYDataset dataset = new DefaultXYDataset();
    dataset.addSeries("points", new double[][] {x, y});
    plot.setDataset(series, dataset);
    plot.setRenderer(series, renderer);
    series++;
  }

  void draw(Graphics2D g) {
    JFreeChart chart = new JFreeChart(null, JFreeChart.DEFAULT_TITLE_FONT, plot, false);
    chart.setBackgroundPaint(null);
    chart.setPadding(RectangleInsets.ZERO_INSETS);
    chart.draw(g, area);
    Style.smooth(g);
    TextLine upUnit = TextLine.of(up.unit(), style.lettering().semiBold(14), up.color());
    double besideFigures = inside.getMinX() - 9 - upUnit.width(g);
    upUnit.fromLeft(g, Math.max(area.getMinX(), besideFigures), inside.getMinY() - 12);
    TextLine.of(across.unit(), style.lettering().semiBold(14), across.color())
        .toRight(g, inside.getMaxX() + RIGHT, area.getMaxY() - 8);
  }

  /** Where the axes lie. */
  Rectangle2D inside() {
    return inside;
  }

  double xOf(double value) {
    return inside.getMinX()
        + inside.getWidth() * (value - across.from()) / (across.to() - across.from());
  }

  double yOf(double value) {
    return inside.getMaxY() - inside.getHeight() * (value - up.from()) / (up.to() - up.from());
  }
}
