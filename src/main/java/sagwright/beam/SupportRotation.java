package sagwright.beam;

/**
 * How far the section over each support turns per newton at the load, times the modulus, in 1/mm²,
 * positive where the overhanging end lifts. By a unit couple at that support (virtual work), whose
 * bending moment and shear are (b−x)/L and −1/L for support A, (x−a)/L and 1/L for B.
 */
record SupportRotation(double bendingA, double shearA, double bendingB, double shearB) {
  static SupportRotation of(Taper taper, SetUp setUp) {
    FlexibilityNodes nodes = FlexibilityNodes.of(taper, setUp);
    double a = setUp.supportAMm();
    double b = setUp.supportBMm();
    double g = setUp.gaugeMm();
    double span = b - a;
    double bendingA = 0;
    double bendingB = 0;
    double shear = 0;
    for (int i = 0; i < nodes.xMm().length; i++) {
      double x = nodes.xMm()[i];
      // The nodes hold M·m and V·v for a unit load at the gauge: take m and v out again.
      double m = x <= g ? (b - g) * (x - a) / span : (g - a) * (b - x) / span;
      double v = x <= g ? (b - g) / span : -(g - a) / span;
      double perMoment = nodes.bendingPerMm()[i] / m;
      bendingA += perMoment * (b - x) / span;
      bendingB += perMoment * (x - a) / span;
      shear += nodes.shearPerMm()[i] / v / span;
    }
    return new SupportRotation(bendingA, -shear, bendingB, shear);
  }

  double atA(double ratio) {
    return bendingA + ratio * shearA;
  }

  double atB(double ratio) {
    return bendingB + ratio * shearB;
  }
}
