package sagwright.beam;

import java.util.List;

/**
 * A shaft's outline: between stations depth and width each run straight; beyond the first and the
 * last station the nearest piece runs straight on to the end. All lengths in mm from the tip end.
 *
 * <p>Immutable. The arrays inside are laid out for the integrals of {@link Flexibility}, which walk
 * the pieces without allocating.
 */
public final class Taper {
  private final SectionShape shape;
  private final double lengthMm;
  private final double[] xMm;
  private final double[] depthMm;
  private final double[] widthMm;

  /**
   * @param stations two or more, {@code xMm} strictly rising from 0 or above, diameters above 0
   * @param lengthMm of the shaft, not short of the last station
   * @throws IllegalArgumentException where the stations are not so, or a diameter runs out to 0
   *     before an end ({@link #endThatRunsOut} tells beforehand)
   */
  public Taper(SectionShape shape, List<Station> stations, double lengthMm) {
    int n = stations.size();
    if (n < 2) {
      throw new IllegalArgumentException("a taper has two stations or more");
    }
    this.shape = shape;
    this.lengthMm = lengthMm;
    xMm = new double[n];
    depthMm = new double[n];
    widthMm = new double[n];
    for (int i = 0; i < n; i++) {
      Station s = stations.get(i);
      boolean rises = i == 0 ? s.xMm() >= 0 : s.xMm() > xMm[i - 1];
      if (!rises || !(s.depthMm() > 0) || !(s.widthMm() > 0) || !(s.xMm() <= lengthMm)) {
        throw new IllegalArgumentException("station " + i + " does not follow: " + s);
      }
      xMm[i] = s.xMm();
      depthMm[i] = s.depthMm();
      widthMm[i] = s.widthMm();
    }
    for (double end : new double[] {0, lengthMm}) {
      if (!(depthAt(end) > 0) || !(widthAt(end) > 0)) {
        throw new IllegalArgumentException("a diameter runs out to 0 before x = " + end);
      }
    }
  }

  /** A round taper straight between knots. */
  public static Taper round(List<Station> knots, double lengthMm) {
    return new Taper(SectionShape.ELLIPSE, knots, lengthMm);
  }

  public SectionShape shape() {
    return shape;
  }

  public double lengthMm() {
    return lengthMm;
  }

  public int stationCount() {
    return xMm.length;
  }

  public Station station(int i) {
    return new Station(xMm[i], depthMm[i], widthMm[i]);
  }

  public List<Station> stations() {
    return java.util.stream.IntStream.range(0, xMm.length).mapToObj(this::station).toList();
  }

  public double stationXMm(int i) {
    return xMm[i];
  }

  /** The piece (0 … stationCount − 2) on which x lies; the end pieces run on to the ends. */
  public int pieceAt(double x) {
    int piece = 0;
    while (piece < xMm.length - 2 && x >= xMm[piece + 1]) {
      piece++;
    }
    return piece;
  }

  public double depthAt(double x) {
    return depthOn(pieceAt(x), x);
  }

  public double widthAt(double x) {
    return widthOn(pieceAt(x), x);
  }

  /** Depth at x by the straight line of one piece, which may be carried on beyond it. */
  public double depthOn(int piece, double x) {
    return straight(depthMm, piece, x);
  }

  /** Width at x by the straight line of one piece, which may be carried on beyond it. */
  public double widthOn(int piece, double x) {
    return straight(widthMm, piece, x);
  }

  /** Cross-section in mm². */
  public double areaAt(double x) {
    return shape.areaFactor() * depthAt(x) * widthAt(x);
  }

  /**
   * Second moment of area in mm⁴ with the shaft turned and free to move sideways: 1/I = cos²φ/I₀ +
   * sin²φ/I₉₀.
   */
  public double secondMomentAt(double x, double turnDegrees) {
    double d = depthAt(x);
    double w = widthAt(x);
    double cos = Math.cos(Math.toRadians(turnDegrees));
    double sin = Math.sin(Math.toRadians(turnDegrees));
    double dw = d * w;
    return shape.secondMomentFactor() * dw * dw * dw / (cos * cos * w * w + sin * sin * d * d);
  }

  /** Volume in mm³ from end to end; exact for straight pieces. */
  public double volumeMm3() {
    return areaMoment(0);
  }

  /** Where the centre of mass of a shaft of even density lies, in mm from the tip end. */
  public double centreOfMassMm() {
    return areaMoment(1) / areaMoment(0);
  }

  /** The integral of A·x^power over the shaft, power 0 or 1: a cubic at most, Simpson is exact. */
  private double areaMoment(int power) {
    double sum = 0;
    for (int piece = 0; piece < xMm.length - 1; piece++) {
      double from = piece == 0 ? 0 : xMm[piece];
      double to = piece == xMm.length - 2 ? lengthMm : xMm[piece + 1];
      double mid = (from + to) / 2;
      sum +=
          (to - from)
              / 6
              * (areaTimes(piece, from, power)
                  + 4 * areaTimes(piece, mid, power)
                  + areaTimes(piece, to, power));
    }
    return shape.areaFactor() * sum;
  }

  private double areaTimes(int piece, double x, int power) {
    double section = depthOn(piece, x) * widthOn(piece, x);
    return power == 0 ? section : section * x;
  }

  private double straight(double[] y, int piece, double x) {
    if (x == xMm[piece + 1]) {
      return y[piece + 1]; // to the last digit, as it was measured
    }
    double slope = (y[piece + 1] - y[piece]) / (xMm[piece + 1] - xMm[piece]);
    return y[piece] + slope * (x - xMm[piece]);
  }

  /**
   * Which end a shaft would not reach because a diameter runs out to 0 before it: 0 for the tip
   * end, {@code lengthMm} for the butt end, NaN where neither does.
   */
  public static double endThatRunsOut(List<Station> stations, double lengthMm) {
    int n = stations.size();
    if (runsOut(stations.get(0), stations.get(1), 0)) {
      return 0;
    }
    return runsOut(stations.get(n - 2), stations.get(n - 1), lengthMm) ? lengthMm : Double.NaN;
  }

  private static boolean runsOut(Station a, Station b, double x) {
    double t = (x - a.xMm()) / (b.xMm() - a.xMm());
    return !(a.depthMm() + t * (b.depthMm() - a.depthMm()) > 0)
        || !(a.widthMm() + t * (b.widthMm() - a.widthMm()) > 0);
  }
}
