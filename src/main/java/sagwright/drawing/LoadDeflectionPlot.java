package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;
import sagwright.quantity.Figures;

/**
 * Load against deflection: the runs, the fitted line, a box around the window it was fitted in, the
 * load at which to let off. The axes stand still while a run grows.
 */
public final class LoadDeflectionPlot {
  /** More points than this are not told apart at any window width; the rest are skipped. */
  private static final int MOST_POINTS = 1200;

  private static final double LEFT = 46;
  private static final double RIGHT = 12;
  private static final double TOP = 26;
  private static final double BOTTOM = 30;
  private static final double BOX_HALF_PX = 11;
  private static final double READING_PX = 2.8;
  private static final double HAND_READ_PX = 9;

  private final Style style;

  public LoadDeflectionPlot(Style style) {
    this.style = style;
  }

  public void paint(Graphics2D g, Rectangle2D area, LoadDeflectionScene scene) {
    paint(g, area, scene, "N");
  }

  /**
   * @param loadUnit what the loads are in, where that is not N
   */
  public void paint(Graphics2D g, Rectangle2D area, LoadDeflectionScene scene, String loadUnit) {
    Style.smooth(g);
    Palette p = style.palette();
    Rectangle2D inside =
        new Rectangle2D.Double(
            area.getMinX() + LEFT,
            area.getMinY() + TOP,
            area.getWidth() - LEFT - RIGHT,
            area.getHeight() - TOP - BOTTOM);
    double mmTo = Math.max(1e-3, scene.greatestMm() * 1.06);
    double nTo = Math.max(1e-3, scene.greatestN() * 1.04);
    NumberAxis mm = axis(mmTo, inside.getWidth(), 70, p.deflectionText());
    NumberAxis n = axis(nTo, inside.getHeight(), 44, p.load());
    XYPlot plot = new XYPlot(null, mm, n, null);
    bare(plot);
    PixelsPer px = new PixelsPer(inside.getWidth() / mmTo, inside.getHeight() / nTo);
    add(plot, new double[0], new double[0], new XYLineAndShapeRenderer());
    if (scene.line() != null) {
      addLine(plot, scene.line(), Math.min(scene.greatestN(), nTo), window(scene.line(), px));
    }
    for (PlottedRun run : scene.runs()) {
      addRun(plot, run);
    }
    if (Double.isFinite(scene.letOffN()) && scene.letOffN() > 0 && scene.letOffN() <= nTo) {
      plot.addRangeMarker(new ValueMarker(scene.letOffN(), p.ink(), Style.DASHED));
    }
    JFreeChart chart = new JFreeChart(null, JFreeChart.DEFAULT_TITLE_FONT, plot, false);
    chart.setBackgroundPaint(null);
    chart.setPadding(RectangleInsets.ZERO_INSETS);
    plot.setFixedDomainAxisSpace(space(0, BOTTOM));
    plot.setFixedRangeAxisSpace(space(LEFT, 0));
    plot.setInsets(new RectangleInsets(TOP, 0, 0, RIGHT));
    chart.draw(g, area);
    Style.smooth(g);

    TextLine.of(loadUnit, style.lettering().semiBold(14), p.load())
        .toRight(g, inside.getMinX() - 9, inside.getMinY() - 12);
    TextLine.of("mm", style.lettering().semiBold(14), p.deflectionText())
        .toRight(g, inside.getMaxX() + RIGHT, area.getMaxY() - 8);
    if (Double.isFinite(scene.letOffN()) && scene.letOffN() > 0 && scene.letOffN() <= nTo) {
      TextLine.of("let off", style.lettering().bold(14), p.ink())
          .fromLeft(g, inside.getMinX() + 12, inside.getMaxY() - scene.letOffN() * px.perN() + 19);
    }
    now(g, inside, px, scene.runs());
  }

  private record PixelsPer(double perMm, double perN) {}

  private NumberAxis axis(double to, double lengthPx, double tickPx, Color color) {
    NumberAxis axis = new NumberAxis();
    axis.setRange(0, to);
    double step = Ticks.step(to * tickPx / lengthPx * 0.72);
    axis.setTickUnit(
        new NumberTickUnit(step) {
          private static final long serialVersionUID = 1L;

          @Override
          public String valueToString(double value) {
            boolean besideUnit =
                value > to - 0.1 * to && color.equals(style.palette().deflectionText());
            return besideUnit ? "" : Figures.rounded(value, Ticks.decimals(step));
          }
        });
    axis.setTickLabelFont(style.lettering().semiBold(14));
    axis.setTickLabelPaint(color);
    axis.setTickMarkPaint(style.palette().ink());
    axis.setTickMarkOutsideLength(6f);
    axis.setAxisLinePaint(style.palette().ink());
    axis.setAxisLineStroke(new BasicStroke(1.3f));
    return axis;
  }

  private static void bare(XYPlot plot) {
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
  }

  private static AxisSpace space(double left, double bottom) {
    AxisSpace space = new AxisSpace();
    space.setLeft(left);
    space.setBottom(bottom);
    return space;
  }

  /** A box along the line, as wide on the picture everywhere. */
  private XYShapeAnnotation window(FittedLine line, PixelsPer px) {
    double n0 = line.windowFromN();
    double n1 = line.windowToN();
    double mm0 = line.deflectionAtMm(n0);
    double mm1 = line.deflectionAtMm(n1);
    double dx = (mm1 - mm0) * px.perMm();
    double dy = (n1 - n0) * px.perN();
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    double sideMm = BOX_HALF_PX * dy / length / px.perMm();
    double sideN = BOX_HALF_PX * dx / length / px.perN();
    Path2D box = new Path2D.Double();
    box.moveTo(mm0 - sideMm, n0 + sideN);
    box.lineTo(mm1 - sideMm, n1 + sideN);
    box.lineTo(mm1 + sideMm, n1 - sideN);
    box.lineTo(mm0 + sideMm, n0 - sideN);
    box.closePath();
    Palette p = style.palette();
    return new XYShapeAnnotation(box, Style.HAIR, p.secondInk(), p.pick());
  }

  private void addLine(XYPlot plot, FittedLine line, double toN, XYShapeAnnotation window) {
    double[] n = {Math.max(0, line.loadAtZeroDeflectionN()), toN};
    double[] mm = {line.deflectionAtMm(n[0]), line.deflectionAtMm(n[1])};
    XYLineAndShapeRenderer renderer = line(Style.DOTTED, style.palette().ink());
    renderer.addAnnotation(window, Layer.BACKGROUND);
    add(plot, mm, n, renderer);
  }

  private void addRun(XYPlot plot, PlottedRun run) {
    Palette p = style.palette();
    int stride = 1 + run.loadN().length / MOST_POINTS;
    int count = (run.loadN().length + stride - 1) / stride;
    double[] mm = new double[count];
    double[] n = new double[count];
    for (int i = 0; i < count; i++) {
      mm[i] = run.deflectionMm()[i * stride];
      n[i] = run.loadN()[i * stride];
    }
    XYLineAndShapeRenderer renderer =
        switch (run.kind()) {
          case CURRENT -> dots(READING_PX, p.ink());
          case HAND_READ -> dots(HAND_READ_PX, p.ink());
          case SECOND -> line(Style.DASHED, p.ink());
          case EARLIER -> line(Style.HAIR, p.secondInk());
        };
    add(plot, mm, n, renderer);
  }

  private static XYLineAndShapeRenderer line(Stroke stroke, Color color) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    renderer.setSeriesPaint(0, color);
    renderer.setSeriesStroke(0, stroke);
    return renderer;
  }

  private static XYLineAndShapeRenderer dots(double px, Color color) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setSeriesPaint(0, color);
    renderer.setSeriesShape(0, new Ellipse2D.Double(-px / 2, -px / 2, px, px));
    return renderer;
  }

  private static void add(XYPlot plot, double[] mm, double[] n, XYLineAndShapeRenderer renderer) {
    boolean first = plot.getDatasetCount() == 1 && plot.getDataset(0) == null;
    int index = first ? 0 : plot.getDatasetCount();
    DefaultXYDataset dataset = new DefaultXYDataset();
    dataset.addSeries("run", new double[][] {mm, n});
    plot.setDataset(index, dataset);
    plot.setRenderer(index, renderer);
  }

  /** A ring where the current run has got to. */
  private void now(Graphics2D g, Rectangle2D inside, PixelsPer px, List<PlottedRun> runs) {
    if (runs.isEmpty() || runs.get(runs.size() - 1).kind() != PlottedRun.Kind.CURRENT) {
      return;
    }
    PlottedRun run = runs.get(runs.size() - 1);
    if (run.loadN().length == 0) {
      return;
    }
    int last = run.loadN().length - 1;
    double x = inside.getMinX() + run.deflectionMm()[last] * px.perMm();
    double y = inside.getMaxY() - run.loadN()[last] * px.perN();
    if (!inside.contains(x, Math.min(y, inside.getMaxY() - 0.01))) {
      return;
    }
    Ellipse2D ring = new Ellipse2D.Double(x - 6.5, y - 6.5, 13, 13);
    g.setColor(style.palette().paper());
    g.fill(ring);
    g.setColor(style.palette().ink());
    g.setStroke(Style.BOLD);
    g.draw(ring);
  }
}
