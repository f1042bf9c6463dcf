package sagwright.finish;

import java.util.Arrays;
import java.util.stream.DoubleStream;
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
    double[] stations =
        DoubleStream.concat(
                DoubleStream.of(0, taper.lengthMm()),
                taper.stations().stream().mapToDouble(s -> s.xMm()))
            .sorted()
            .distinct()
            .toArray();
    DoubleStream.Builder places = DoubleStream.builder();
    for (int i = 0; i < stations.length; i++) {
      places.add(stations[i]);
      if (i < stations.length - 1) {
        double here = taper.depthAt(stations[i]) - taper.widthAt(stations[i]);
        double next = taper.depthAt(stations[i + 1]) - taper.widthAt(stations[i + 1]);
        if (here < 0 != next < 0 && here != 0 && next != 0) {
          places.add(stations[i] + (stations[i + 1] - stations[i]) * here / (here - next));
        }
      }
    }
    double[] x = places.build().toArray();
    double[] diameter =
        Arrays.stream(x).map(at -> Math.min(taper.depthAt(at), taper.widthAt(at))).toArray();
    return new Outline(x, diameter);
  }

  double[] knots() {
    return xMm.clone();
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
