package sagwright.beam;

/**
 * The shape that a shaft takes under its load, scaled so that it is 1 at the gauge: between the
 * supports by Maxwell's reciprocal J(c, x), beyond them the straight tangents that the overhanging
 * ends follow. Positive the way the load pushes; the ends lift, so they are negative.
 */
public final class ElasticCurve {
  private final Taper taper;
  private final SetUp setUp;
  private final double ratio;
  private final double atGaugePerMm;
  private final double slopeAtA;
  private final double slopeAtB;

  private ElasticCurve(Taper taper, SetUp setUp, double ratio) {
    this.taper = taper;
    this.setUp = setUp;
    this.ratio = ratio;
    this.atGaugePerMm = Flexibility.of(taper, setUp).perMm(ratio);
    SupportRotation rotation = SupportRotation.of(taper, setUp);
    this.slopeAtA = rotation.atA(ratio);
    this.slopeAtB = rotation.atB(ratio);
  }

  /**
   * @param modulusToShearRatio r = E/G
   */
  public static ElasticCurve of(Taper taper, SetUp setUp, double modulusToShearRatio) {
    return new ElasticCurve(taper, setUp, modulusToShearRatio);
  }

  /**
   * Deflection at x over deflection at the gauge; x in mm from the tip end, anywhere on the shaft.
   */
  public double shapeAt(double xMm) {
    return modulusTimesDeflectionPerNewton(xMm) / atGaugePerMm;
  }

  /** Deflection at x per newton at the load, times the modulus: 1/mm. */
  public double modulusTimesDeflectionPerNewton(double xMm) {
    double a = setUp.supportAMm();
    double b = setUp.supportBMm();
    if (xMm <= a) {
      return -slopeAtA * (a - xMm);
    }
    if (xMm >= b) {
      return -slopeAtB * (xMm - b);
    }
    return Flexibility.at(taper, setUp, xMm).perMm(ratio);
  }
}
