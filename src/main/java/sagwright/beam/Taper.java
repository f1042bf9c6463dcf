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
    this(shape, inARow(stations), lengthMm);
  }

  /**
   * @param stations the same in a row: x, depth and width of the first, then of the next
   */
  public Taper(SectionShape shape, double[] stations, double lengthMm) {
    int n = stations.length / 3;
    if (n < 2) {
      throw new IllegalArgumentException("a taper has two stations or more");
    }
    this.shape = shape;
    this.lengthMm = lengthMm;
    xMm = new double[n];
    depthMm = new double[n];
    widthMm = new double[n];
    for (int i = 0; i < n; i++) {
      double x = stations[3 * i];
      double depth = stations[3 * i + 1];
      double width = stations[3 * i + 2];
      boolean rises = i == 0 ? x >= 0 : x > xMm[i - 1];
      if (!rises || !(depth > 0) || !(width > 0) || !(x <= lengthMm)) {
        throw new IllegalArgumentException(
            "station " + i + " does not follow: " + new Station(x, depth, width));
      }
      xMm[i] = x;
      depthMm[i] = depth;
      widthMm[i] = width;
    }
    requireThick(0, 0);
    requireThick(n - 2, lengthMm);
  }

  private void requireThick(int piece, double end) {
    if (!(depthOn(piece, end) > 0) || !(widthOn(piece, end) > 0)) {
      throw new IllegalArgumentException("a diameter runs out to 0 before x = " + end);
    }
  }

  private static double[] inARow(List<Station> stations) {
    double[] row = new double[3 * stations.size()];
    int i = 0;
    for (Station station : stations) {
      row[i++] = station.xMm();
      row[i++] = station.depthMm();
      row[i++] = station.widthMm();
    }
    return row;
  }

  private Taper(
      SectionShape shape, double lengthMm, double[] xMm, double[] depthMm, double[] widthMm) {
    this.shape = shape;
    this.lengthMm = lengthMm;
    this.xMm = xMm;
    this.depthMm = depthMm;
    this.widthMm = widthMm;
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

  public double stationDepthMm(int i) {
    return depthMm[i];
  }

  public double stationWidthMm(int i) {
    return widthMm[i];
  }

  /** The same outline with a station at each end. */
  public Taper toItsEnds() {
    int n = xMm.length;
    boolean startsLate = xMm[0] > 0;
    boolean endsEarly = xMm[n - 1] < lengthMm;
    if (!startsLate && !endsEarly) {
      return this;
    }
    int first = startsLate ? 1 : 0;
    int count = n + first + (endsEarly ? 1 : 0);
    return new Taper(
        shape,
        lengthMm,
        withEnds(xMm, first, count, 0, lengthMm),
        withEnds(depthMm, first, count, depthAt(0), depthAt(lengthMm)),
        withEnds(widthMm, first, count, widthAt(0), widthAt(lengthMm)));
  }

  private static double[] withEnds(
      double[] stations, int first, int count, double tip, double butt) {
    double[] all = new double[count];
    all[0] = tip;
    all[count - 1] = butt;
    System.arraycopy(stations, 0, all, first, stations.length);
    return all;
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
      double depthFrom = depthOn(piece, from);
      double depthTo = depthOn(piece, to);
      double widthFrom = widthOn(piece, from);
      double widthTo = widthOn(piece, to);
      double first = depthFrom * widthFrom;
      double fourInTheMiddle = (depthFrom + depthTo) * (widthFrom + widthTo);
      double last = depthTo * widthTo;
      if (power == 1) {
        first *= from;
        fourInTheMiddle *= (from + to) / 2;
        last *= to;
      }
      sum += (to - from) / 6 * (first + fourInTheMiddle + last);
    }
    return shape.areaFactor() * sum;
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
