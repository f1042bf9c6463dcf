package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Load against deflection: the runs, the fitted line, a box around the window it was fitted in, the
 * load at which to let off. The axes stand still while a run grows.
 */
public final class LoadDeflectionPlot {
  /** More points than this are not told apart at any window width; the rest are skipped. */
  private static final int MOST_POINTS = 1200;

  private static final double LEFT = 46;
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
    double mmTo = Math.max(1e-3, scene.greatestMm() * 1.06);
    double nTo = Math.max(1e-3, scene.greatestN() * 1.04);
    QuietPlot plot =
        new QuietPlot(
            style,
            area,
            LEFT,
            new QuietPlot.Scale(0, mmTo, "mm", 70, p.deflectionText()),
            new QuietPlot.Scale(0, nTo, loadUnit, 44, p.load()));
    if (scene.line() != null) {
      addLine(plot, scene.line(), Math.min(scene.greatestN(), nTo));
    }
    for (PlottedRun run : scene.runs()) {
      addRun(plot, run);
    }
    boolean hasLetOff =
        Double.isFinite(scene.letOffN()) && scene.letOffN() > 0 && scene.letOffN() <= nTo;
    if (hasLetOff) {
      plot.level(scene.letOffN(), Style.DASHED, p.ink());
    }
    plot.draw(g);
    if (hasLetOff) {
      TextLine.of("let off", style.lettering().bold(14), p.ink())
          .fromLeft(g, plot.inside().getMinX() + 12, plot.yOf(scene.letOffN()) + 19);
    }
    now(g, plot, scene.runs());
  }

  private void addLine(QuietPlot plot, FittedLine line, double toN) {
    plot.area(window(plot, line), style.palette().secondInk(), style.palette().pick());
    double[] n = {Math.max(0, line.loadAtZeroDeflectionN()), toN};
    double[] mm = {line.deflectionAtMm(n[0]), line.deflectionAtMm(n[1])};
    plot.line(mm, n, Style.DOTTED, style.palette().ink());
  }

  /** A box along the line, as wide on the picture everywhere. */
  private static Shape window(QuietPlot plot, FittedLine line) {
    double pxPerMm = plot.xOf(1) - plot.xOf(0);
    double pxPerN = plot.yOf(0) - plot.yOf(1);
    double n0 = line.windowFromN();
    double n1 = line.windowToN();
    double mm0 = line.deflectionAtMm(n0);
    double mm1 = line.deflectionAtMm(n1);
    double dx = (mm1 - mm0) * pxPerMm;
    double dy = (n1 - n0) * pxPerN;
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    double sideMm = BOX_HALF_PX * dy / length / pxPerMm;
    double sideN = BOX_HALF_PX * dx / length / pxPerN;
    Path2D box = new Path2D.Double();
    box.moveTo(mm0 - sideMm, n0 + sideN);
    box.lineTo(mm1 - sideMm, n1 + sideN);
    box.lineTo(mm1 + sideMm, n1 - sideN);
    box.lineTo(mm0 + sideMm, n0 - sideN);
    box.closePath();
    return box;
  }

  private void addRun(QuietPlot plot, PlottedRun run) {
    Palette p = style.palette();
    int stride = 1 + run.loadN().length / MOST_POINTS;
    int count = (run.loadN().length + stride - 1) / stride;
    double[] mm = new double[count];
    double[] n = new double[count];
    for (int i = 0; i < count; i++) {
      mm[i] = run.deflectionMm()[i * stride];
      n[i] = run.loadN()[i * stride];
    }
    switch (run.kind()) {
      case CURRENT -> plot.specks(mm, n, READING_PX, p.ink());
      case HAND_READ -> plot.specks(mm, n, HAND_READ_PX, p.ink());
      case SECOND -> plot.line(mm, n, Style.DASHED, p.ink());
      case EARLIER -> plot.line(mm, n, Style.HAIR, p.secondInk());
      case PICK_1, PICK_2, PICK_3, PICK_4 ->
          plot.line(mm, n, run.kind().pickLine().stroke(2), p.ink());
    }
  }

  /** A ring where the current run has got to. */
  private void now(Graphics2D g, QuietPlot plot, List<PlottedRun> runs) {
    if (runs.isEmpty() || runs.get(runs.size() - 1).kind() != PlottedRun.Kind.CURRENT) {
      return;
    }
    PlottedRun run = runs.get(runs.size() - 1);
    if (run.loadN().length == 0) {
      return;
    }
    int last = run.loadN().length - 1;
    double x = plot.xOf(run.deflectionMm()[last]);
    double y = plot.yOf(run.loadN()[last]);
    if (!plot.inside().contains(x, Math.min(y, plot.inside().getMaxY() - 0.01))) {
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
