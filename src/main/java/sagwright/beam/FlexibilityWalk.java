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
    double depthFrom = taper.depthOn(piece, from);
    double depthTo = taper.depthOn(piece, to);
    double widthFrom = taper.widthOn(piece, from);
    double widthTo = taper.widthOn(piece, to);
    int parts = GaussLegendre.parts(depthFrom, depthTo, widthFrom, widthTo);
    double span = b - a;
    double mid = (from + to) / 2;
    double vv = shearOfUnitLoad(mid, c, span) * shearOfUnitLoad(mid, g, span);
    // Cuts that keep the ratio of the greater of the two tapers the same in every part.
    boolean byDepth =
        Math.abs(Math.log(depthTo / depthFrom)) >= Math.abs(Math.log(widthTo / widthFrom));
    double first = byDepth ? depthFrom : widthFrom;
    double last = byDepth ? depthTo : widthTo;
    double start = from;
    for (int part = 1; part <= parts; part++) {
      double end = part == parts ? to : cut(from, to, first, last, (double) part / parts);
      double half = (end - start) / 2;
      double centre = (end + start) / 2;
      for (int i = 0; i < GaussLegendre.POINTS; i++) {
        double x = centre + half * GaussLegendre.NODES[i];
        double t = (x - from) / (to - from);
        double d = depthFrom + t * (depthTo - depthFrom);
        double w = widthFrom + t * (widthTo - widthFrom);
        double inverse = 1 / (d * w);
        double weight = half * GaussLegendre.WEIGHTS[i];
        double mm = momentOfUnitLoad(x, c, span) * momentOfUnitLoad(x, g, span);
        double bendingHere =
            weight * mm * (cos2 * w * w + sin2 * d * d) * inverse * inverse * inverse;
        double shearHere = weight * vv * inverse;
        bending += bendingHere;
        shear += shearHere;
        visit(piece, x, bendingHere, shearHere);
      }
      start = end;
    }
  }

  /** Called at each point of the rule with its share of the two sums (shape factors left out). */
  void visit(int piece, double x, double bendingShare, double shearShare) {}

  private static double cut(double from, double to, double first, double last, double share) {
    double diameter = first * Math.pow(last / first, share);
    return from + (to - from) * (diameter - first) / (last - first);
  }

  private double momentOfUnitLoad(double x, double at, double span) {
    return x <= at ? (b - at) * (x - a) / span : (at - a) * (b - x) / span;
  }

  private double shearOfUnitLoad(double x, double at, double span) {
    return x <= at ? (b - at) / span : -(at - a) / span;
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
