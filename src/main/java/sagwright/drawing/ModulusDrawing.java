package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sagwright.quantity.Figures;

/**
 * The modulus along the shaft with its 95 % band, drawn over the shaft itself, each place above its
 * own; each run a bar over the wood that it listens to, at the modulus that it showed.
 */
public final class ModulusDrawing {
  private static final double THICKER = 3;
  private static final double BED_ZONE = 35;
  private static final double TOP_ROOM = 26;
  private static final double SHAFT_ROOM = 96;

  /** Room beside a graph, of its own height. */
  private static final double MARGIN = 0.08;

  /** Labels nearer than this to one another cannot be read. */
  private static final double NEAR_PX = 16;

  private final Style style;

  public ModulusDrawing(Style style) {
    this.style = style;
  }

  /** From modulus to height. */
  private record Axis(double lowMPa, double highMPa, double topPx, double footPx) {
    double px(double modulusMPa) {
      return footPx - (footPx - topPx) * (modulusMPa - lowMPa) / (highMPa - lowMPa);
    }
  }

  /**
   * @param area to draw in, at least 900 × 260
   */
  public void paint(Graphics2D g, Rectangle2D area, ModulusScene scene) {
    Style.smooth(g);
    Palette p = style.palette();
    double bedPx = area.getMaxY() - BED_ZONE;
    double lengthMm = scene.taper().lengthMm();
    LongScale scale =
        new LongScale(
            area.getMinX(), bedPx - SHAFT_ROOM / 2, area.getWidth() / lengthMm, THICKER, 1);
    ShaftOutline shaft = ShaftOutline.straight(scene.taper(), scale, 0);
    shaft.fill(g, p);
    shaft.stations(g, p);
    shaft.outline(g, p);
    new Ruler(style, scale, lengthMm).paint(g, bedPx);
    Axis axis = axis(scene, area.getMinY() + TOP_ROOM, bedPx - SHAFT_ROOM - 8);
    tickLines(g, area, axis);
    if (!scene.along().isEmpty()) {
      band(g, scale, axis, scene.along());
    }
    tickFigures(g, area, axis);
    for (ModulusScene.HeardRun run : scene.runs()) {
      run(g, scale, axis, run);
    }
    numbers(g, scale, axis, scene.runs());
    TextLine.of(
            "modulus along the shaft, GPa; band and whiskers are 95 %",
            style.lettering().regular(14), p.secondInk())
        .fromLeft(g, area.getMinX(), area.getMinY() + 14);
  }

  private static Axis axis(ModulusScene scene, double topPx, double footPx) {
    double[] ends =
        Stream.concat(
                scene.along().stream().map(ModulusScene.Place::modulusMPa),
                scene.runs().stream().map(ModulusScene.HeardRun::modulusMPa))
            .flatMapToDouble(
                e -> DoubleStream.of(e.value() - e.halfWidth95(), e.value() + e.halfWidth95()))
            .toArray();
    double low = DoubleStream.of(ends).min().orElse(0);
    double high = DoubleStream.of(ends).max().orElse(1);
    double margin = MARGIN * Math.max(high - low, 0.02 * high);
    return new Axis(low - margin, high + margin, topPx, footPx);
  }

  private static double[] ticks(Axis axis) {
    double step = step(axis);
    double first = Math.ceil(axis.lowMPa() / step) * step;
    return DoubleStream.iterate(first, at -> at < axis.highMPa(), at -> at + step).toArray();
  }

  private static double step(Axis axis) {
    return Ticks.step((axis.highMPa() - axis.lowMPa()) / 5);
  }

  private void tickLines(Graphics2D g, Rectangle2D area, Axis axis) {
    g.setStroke(Style.HAIR);
    g.setColor(style.palette().hairline());
    for (double at : ticks(axis)) {
      g.draw(new Line2D.Double(area.getMinX(), axis.px(at), area.getMaxX(), axis.px(at)));
    }
  }

  /** Above their lines, over the band. */
  private void tickFigures(Graphics2D g, Rectangle2D area, Axis axis) {
    int decimals = Ticks.decimals(step(axis) / 1000);
    for (double at : ticks(axis)) {
      TextLine line =
          TextLine.of(
              Figures.rounded(at / 1000, decimals),
              style.lettering().regular(14),
              style.palette().secondInk());
      onPaper(g, line, area.getMinX() + 4, axis.px(at) - 4);
    }
  }

  /** Runs that lie on one another share a label. */
  private void numbers(Graphics2D g, LongScale scale, Axis axis, List<ModulusScene.HeardRun> runs) {
    boolean[] written = new boolean[runs.size()];
    for (int i = 0; i < runs.size(); i++) {
      if (written[i]) {
        continue;
      }
      double x = scale.px(runs.get(i).toMm()) + 6;
      double y = axis.px(runs.get(i).modulusMPa().value());
      StringBuilder label = new StringBuilder(String.valueOf(runs.get(i).number()));
      for (int j = i + 1; j < runs.size(); j++) {
        boolean near =
            Math.abs(scale.px(runs.get(j).toMm()) + 6 - x) < NEAR_PX
                && Math.abs(axis.px(runs.get(j).modulusMPa().value()) - y) < NEAR_PX;
        if (near && !written[j]) {
          written[j] = true;
          label.append(", ").append(runs.get(j).number());
        }
      }
      TextLine line =
          TextLine.of(label.toString(), style.lettering().semiBold(14), style.palette().ink());
      onPaper(g, line, x, y - 7);
    }
  }

  /** The modulus may run through where a label stands. */
  private void onPaper(Graphics2D g, TextLine line, double x, double baseline) {
    g.setColor(style.palette().paper());
    g.fill(new Rectangle2D.Double(x - 2, baseline - 13, line.width(g) + 4, 16));
    line.fromLeft(g, x, baseline);
  }

  private void band(Graphics2D g, LongScale scale, Axis axis, List<ModulusScene.Place> along) {
    Path2D band = new Path2D.Double();
    Path2D line = new Path2D.Double();
    for (int i = 0; i < along.size(); i++) {
      ModulusScene.Place at = along.get(i);
      double x = scale.px(at.xMm());
      double high = axis.px(at.modulusMPa().value() + at.modulusMPa().halfWidth95());
      if (i == 0) {
        band.moveTo(x, high);
        line.moveTo(x, axis.px(at.modulusMPa().value()));
      } else {
        band.lineTo(x, high);
        line.lineTo(x, axis.px(at.modulusMPa().value()));
      }
    }
    for (int i = along.size() - 1; i >= 0; i--) {
      ModulusScene.Place at = along.get(i);
      band.lineTo(
          scale.px(at.xMm()), axis.px(at.modulusMPa().value() - at.modulusMPa().halfWidth95()));
    }
    band.closePath();
    g.setColor(style.palette().plank());
    g.fill(band);
    g.setColor(style.palette().ink());
    g.setStroke(Style.BOLD);
    g.draw(line);
  }

  private void run(Graphics2D g, LongScale scale, Axis axis, ModulusScene.HeardRun run) {
    Palette p = style.palette();
    double y = axis.px(run.modulusMPa().value());
    double x = scale.px(run.middleMm());
    double half = run.modulusMPa().halfWidth95();
    g.setColor(p.brassText());
    g.setStroke(Style.OUTLINE);
    g.draw(new Line2D.Double(scale.px(run.fromMm()), y, scale.px(run.toMm()), y));
    g.draw(
        new Line2D.Double(
            x,
            axis.px(run.modulusMPa().value() + half),
            x,
            axis.px(run.modulusMPa().value() - half)));
    Ellipse2D dot = new Ellipse2D.Double(x - 6, y - 6, 12, 12);
    g.setColor(p.brass());
    g.fill(dot);
    g.setColor(p.ink());
    g.setStroke(Style.OUTLINE);
    g.draw(dot);
  }
}
