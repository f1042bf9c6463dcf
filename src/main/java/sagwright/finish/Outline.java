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
    double[] stations = places(taper);
    int last = stations.length - 1;
    double[] x = new double[2 * stations.length];
    int count = 0;
    for (int i = 0; i <= last; i++) {
      x[count++] = stations[i];
      double here = taper.depthAt(stations[i]) - taper.widthAt(stations[i]);
      if (here != 0 && i < last) {
        double next = taper.depthAt(stations[i + 1]) - taper.widthAt(stations[i + 1]);
        if (here < 0 != next < 0 && next != 0) {
          x[count++] = stations[i] + (stations[i + 1] - stations[i]) * here / (here - next);
        }
      }
    }
    x = Arrays.copyOf(x, count);
    double[] diameter = new double[count];
    for (int i = 0; i < count; i++) {
      diameter[i] = Math.min(taper.depthAt(x[i]), taper.widthAt(x[i]));
    }
    return new Outline(x, diameter);
  }

  /** Both ends and the stations, rising, each once. */
  private static double[] places(Taper taper) {
    int stations = taper.stationCount();
    double[] places = new double[stations + 2];
    int count = 0;
    if (taper.stationXMm(0) > 0) {
      places[count++] = 0;
    }
    for (int i = 0; i < stations; i++) {
      places[count++] = taper.stationXMm(i);
    }
    if (taper.stationXMm(stations - 1) < taper.lengthMm()) {
      places[count++] = taper.lengthMm();
    }
    return Arrays.copyOf(places, count);
  }

  /** Rising; not to be written to. */
  double[] knots() {
    return xMm;
  }

  double lengthMm() {
    return xMm[xMm.length - 1];
  }

  /** The diameter at x; beyond an end that of the end. */
  double at(double x) {
    int i = Arrays.binarySearch(xMm, x);
    if (i >= 0) {
      return diameterMm[i];
    }
    int next = -i - 1;
    if (next == 0) {
      return diameterMm[0];
    }
    if (next == xMm.length) {
      return diameterMm[next - 1];
    }
    double t = (x - xMm[next - 1]) / (xMm[next] - xMm[next - 1]);
    return diameterMm[next - 1] + t * (diameterMm[next] - diameterMm[next - 1]);
  }
}
