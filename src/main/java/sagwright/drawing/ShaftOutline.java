package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import sagwright.beam.Taper;

/** The side view of a shaft, straight or bent, and what is drawn on its wood. */
final class ShaftOutline {
  /** Places along a bent shaft at which its curve is worked out: smooth at any window width. */
  private static final int PLACES = 160;

  private final Taper taper;
  private final LongScale scale;
  private final double turnDegrees;
  private final double[] xMm;
  private final double[] bendMm;

  /**
   * @param bendMm deflection at x, positive downwards, both in mm
   */
  ShaftOutline(Taper taper, LongScale scale, double turnDegrees, DoubleUnaryOperator bendMm) {
    this.taper = taper;
    this.scale = scale;
    this.turnDegrees = turnDegrees;
    double end = taper.lengthMm();
    this.xMm =
        DoubleStream.concat(
                DoubleStream.iterate(0, i -> i <= PLACES, i -> i + 1).map(i -> end * i / PLACES),
                taper.stations().stream().mapToDouble(s -> s.xMm()))
            .sorted()
            .distinct()
            .toArray();
    this.bendMm = Arrays.stream(xMm).map(bendMm).toArray();
  }

  static ShaftOutline straight(Taper taper, LongScale scale, double turnDegrees) {
    return new ShaftOutline(taper, scale, turnDegrees, x -> 0);
  }

  double topPx(double x) {
    return centrePx(x) - half(x);
  }

  double bottomPx(double x) {
    return centrePx(x) + half(x);
  }

  double centrePx(double x) {
    return scale.axisPx() + scale.bendPx(bendAt(x));
  }

  Shape shape() {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < xMm.length; i++) {
      double y = centre(i) - half(xMm[i]);
      if (i == 0) {
        path.moveTo(scale.px(xMm[i]), y);
      } else {
        path.lineTo(scale.px(xMm[i]), y);
      }
    }
    for (int i = xMm.length - 1; i >= 0; i--) {
      path.lineTo(scale.px(xMm[i]), centre(i) + half(xMm[i]));
    }
    path.closePath();
    return path;
  }

  void fill(Graphics2D g, Palette palette) {
    g.setColor(palette.ash());
    g.fill(shape());
  }

  void outline(Graphics2D g, Palette palette) {
    g.setColor(palette.ink());
    g.setStroke(Style.OUTLINE);
    g.draw(shape());
  }

  /** Its two edges, dotted: where the shaft lay unbent. */
  void ghost(Graphics2D g, Palette palette) {
    g.setColor(palette.secondInk());
    g.setStroke(Style.DOTTED);
    for (int side : new int[] {-1, 1}) {
      Path2D edge = new Path2D.Double();
      edge.moveTo(scale.px(0), scale.axisPx() + side * half(0));
      for (double x : xMm) {
        edge.lineTo(scale.px(x), scale.axisPx() + side * half(x));
      }
      g.draw(edge);
    }
  }

  /** A stroke across the wood at each place. */
  void strokes(Graphics2D g, Palette palette, double[] placesMm) {
    g.setColor(palette.grain());
    g.setStroke(new BasicStroke(0.9f));
    for (double x : placesMm) {
      g.draw(new Line2D.Double(scale.px(x), topPx(x) + 1, scale.px(x), bottomPx(x) - 1));
    }
  }

  /** A short mark on the upper edge at each caliper station. */
  void stations(Graphics2D g, Palette palette) {
    g.setColor(palette.ink());
    g.setStroke(Style.HAIR);
    for (int i = 0; i < taper.stationCount(); i++) {
      double x = taper.stationXMm(i);
      g.draw(new Line2D.Double(scale.px(x), topPx(x), scale.px(x), topPx(x) + 5));
    }
  }

  private double centre(int i) {
    return scale.axisPx() + scale.bendPx(bendMm[i]);
  }

  private double half(double x) {
    return scale.halfPx(seenDiameterMm(taper, x, turnDegrees));
  }

  /** What an ellipse of depth d and width w shows from the side when turned by an angle. */
  static double seenDiameterMm(Taper taper, double x, double turnDegrees) {
    double angle = Math.toRadians(turnDegrees);
    return Math.hypot(taper.depthAt(x) * Math.cos(angle), taper.widthAt(x) * Math.sin(angle));
  }

  private double bendAt(double x) {
    int i = Arrays.binarySearch(xMm, x);
    if (i >= 0) {
      return bendMm[i];
    }
    int after = Math.max(1, Math.min(xMm.length - 1, -i - 1));
    double t = (x - xMm[after - 1]) / (xMm[after] - xMm[after - 1]);
    return bendMm[after - 1] + t * (bendMm[after] - bendMm[after - 1]);
  }
}
