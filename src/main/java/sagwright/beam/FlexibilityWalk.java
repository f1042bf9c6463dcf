package sagwright.beam;

/**
 * One walk along the shaft from support to support, piece by piece, that sums M·m/I and κ·V·v/A.
 * Pieces end at stations, at the load and at the gauge, so that inside each everything is straight.
 * What is done at each point of the rule is for subclasses to add to.
 */
class FlexibilityWalk {
  private final Taper taper;
  private final double a;
  private final double b;
  private final double c;
  private final double g;
  private final double cos2;
  private final double sin2;
  private double bending;
  private double shear;

  FlexibilityWalk(Taper taper, SetUp setUp, double loadMm, double gaugeMm) {
    this.taper = taper;
    this.a = setUp.supportAMm();
    this.b = setUp.supportBMm();
    this.c = loadMm;
    this.g = gaugeMm;
    double cos = Math.cos(Math.toRadians(setUp.turnDegrees()));
    this.cos2 = cos * cos;
    this.sin2 = 1 - cos2;
  }

  final Flexibility sum() {
    SectionShape shape = taper.shape();
    return new Flexibility(
        bending / shape.secondMomentFactor(), shear * shape.shearFactor() / shape.areaFactor());
  }

  final void run() {
    double from = a;
    while (from < b) {
      int piece = taper.pieceAt(from);
      double to = Math.min(b, pieceEnd(piece));
      to = from < c && c < to ? c : to;
      to = from < g && g < to ? g : to;
      to = nextBreak(from, to);
      walkPiece(piece, from, to);
      from = to;
    }
  }

  private double pieceEnd(int piece) {
    return piece < taper.stationCount() - 2 ? taper.stationXMm(piece + 1) : Double.MAX_VALUE;
  }

  /** A further place between from and to where the integrand has a kink; to where there is none. */
  double nextBreak(double from, double to) {
    return to;
  }

  private void walkPiece(int piece, double from, double to) {
    double length = to - from;
    double depth = taper.depthOn(piece, from);
    double width = taper.widthOn(piece, from);
    double depthTo = taper.depthOn(piece, to);
    double widthTo = taper.widthOn(piece, to);
    double depthPerMm = (depthTo - depth) / length;
    double widthPerMm = (widthTo - width) / length;
    double momentC = momentOfUnitLoad(from, to, c);
    double momentG = momentOfUnitLoad(from, to, g);
    double shearC = shearOfUnitLoad(to, c);
    double shearG = shearOfUnitLoad(to, g);
    // Cuts that keep the ratio of the greater of the two tapers the same in every part.
    boolean byDepth = GaussLegendre.ratio(depth, depthTo) >= GaussLegendre.ratio(width, widthTo);
    double first = byDepth ? depth : width;
    double last = byDepth ? depthTo : widthTo;
    int parts = GaussLegendre.parts(first, last);
    double start = 0;
    for (int part = 1; part <= parts; part++) {
      double end = part == parts ? length : length * cut(first, last, (double) part / parts);
      double half = (end - start) / 2;
      double centre = (end + start) / 2;
      for (int i = 0; i < GaussLegendre.POINTS; i++) {
        double along = centre + half * GaussLegendre.NODES[i];
        double d = depth + along * depthPerMm;
        double w = width + along * widthPerMm;
        double inverse = 1 / (d * w);
        double weighed = half * GaussLegendre.WEIGHTS[i] * inverse;
        double mm = (momentC + along * shearC) * (momentG + along * shearG);
        double bendingHere = weighed * mm * (cos2 * w * w + sin2 * d * d) * (inverse * inverse);
        double shearHere = weighed * shearC * shearG;
        bending += bendingHere;
        shear += shearHere;
        visit(piece, from + along, bendingHere, shearHere);
      }
      start = end;
    }
  }

  /** Called at each point of the rule with its share of the two sums (shape factors left out). */
  void visit(int piece, double x, double bendingShare, double shearShare) {}

  private static double cut(double first, double last, double share) {
    return (first * Math.pow(last / first, share) - first) / (last - first);
  }

  /** At the beginning of a piece that ends at {@code to}, all on one side of the load. */
  private double momentOfUnitLoad(double from, double to, double at) {
    return to <= at ? (b - at) * (from - a) / (b - a) : (at - a) * (b - from) / (b - a);
  }

  /** All along a piece that ends at {@code to}; it is the slope of the moment. */
  private double shearOfUnitLoad(double to, double at) {
    return to <= at ? (b - at) / (b - a) : -(at - a) / (b - a);
  }

  final Taper taper() {
    return taper;
  }

  final double cos2() {
    return cos2;
  }

  final double sin2() {
    return sin2;
  }
}
