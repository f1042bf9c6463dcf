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
    ticks(g, area, axis);
    if (!scene.along().isEmpty()) {
      band(g, scale, axis, scene.along());
    }
    for (ModulusScene.HeardRun run : scene.runs()) {
      run(g, scale, axis, run);
    }
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

  private void ticks(Graphics2D g, Rectangle2D area, Axis axis) {
    Palette p = style.palette();
    double step = Ticks.step((axis.highMPa() - axis.lowMPa()) / 5);
    g.setStroke(Style.HAIR);
    for (double at = Math.ceil(axis.lowMPa() / step) * step; at < axis.highMPa(); at += step) {
      double y = axis.px(at);
      g.setColor(p.hairline());
      g.draw(new Line2D.Double(area.getMinX() + 40, y, area.getMaxX(), y));
      TextLine.of(
              Figures.rounded(at / 1000, Ticks.decimals(step / 1000)),
              style.lettering().regular(14),
              p.secondInk())
          .toRight(g, area.getMinX() + 34, y + 5);
    }
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
    TextLine.of(String.valueOf(run.number()), style.lettering().semiBold(14), p.ink())
        .fromLeft(g, scale.px(run.toMm()) + 6, y + 5);
  }
}
