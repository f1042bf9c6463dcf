package sagwright.finish;

import java.util.Arrays;
import sagwright.beam.Taper;

/** A diameter that runs straight between knots, from 0 to a length. */
final class Outline {
  private final double[] xMm;
  private final double[] diameterMm;

  private Outline(double[] xMm, double[] diameterMm) {
    this.xMm = xMm;
    this.diameterMm = diameterMm;
  }

  /** The lesser of depth and width all along a taper. */
  static Outline lesserOf(Taper taper) {
    Taper whole = taper.toItsEnds();
    int stations = whole.stationCount();
    double[] x = new double[2 * stations];
    double[] diameter = new double[2 * stations];
    int count = 0;
    for (int i = 0; i < stations; i++) {
      x[count] = whole.stationXMm(i);
      diameter[count++] = Math.min(whole.stationDepthMm(i), whole.stationWidthMm(i));
      double crossing = i + 1 < stations ? crossing(whole, i) : Double.NaN;
      if (!Double.isNaN(crossing)) {
        x[count] = crossing;
        diameter[count++] = Math.min(whole.depthOn(i, crossing), whole.widthOn(i, crossing));
      }
    }
    return new Outline(Arrays.copyOf(x, count), Arrays.copyOf(diameter, count));
  }

  /** Where depth and width cross within a piece; NaN where they do not. */
  private static double crossing(Taper taper, int piece) {
    double here = taper.stationDepthMm(piece) - taper.stationWidthMm(piece);
    double next = taper.stationDepthMm(piece + 1) - taper.stationWidthMm(piece + 1);
    if (here == 0 || next == 0 || here < 0 == next < 0) {
      return Double.NaN;
    }
    double from = taper.stationXMm(piece);
    return from + (taper.stationXMm(piece + 1) - from) * here / (here - next);
  }

  /** Rising; not to be written to. */
  double[] knots() {
    return xMm;
  }

  double lengthMm() {
    return xMm[xMm.length - 1];
  }

  /** The diameter at one of the knots. */
  double atKnot(int i) {
    return diameterMm[i];
  }

  /** The diameter at x; beyond an end that of the end. */
  double at(double x) {
    int next = firstKnotNotBefore(x);
    if (next == xMm.length) {
      return diameterMm[next - 1];
    }
    if (next == 0 || xMm[next] == x) {
      return diameterMm[next];
    }
    double t = (x - xMm[next - 1]) / (xMm[next] - xMm[next - 1]);
    return diameterMm[next - 1] + t * (diameterMm[next] - diameterMm[next - 1]);
  }

  private int firstKnotNotBefore(double x) {
    int from = 0;
    int to = xMm.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (xMm[middle] < x) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }
}
