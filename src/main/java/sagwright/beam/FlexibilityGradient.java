package sagwright.beam;

/**
 * How the flexibility changes with each caliper reading, in one walk along the shaft: ∂J/∂depth and
 * ∂J/∂width of every station, for bending and shear apart, in 1/mm².
 *
 * <p>Depth and width run straight between stations, so that a reading acts on the two pieces beside
 * it by its hat function; on the end pieces that are carried on, by the same straight lines.
 */
public final class FlexibilityGradient {
  private final Flexibility flexibility;
  private final double[] bendingByDepth;
  private final double[] bendingByWidth;
  private final double[] shearByDepth;
  private final double[] shearByWidth;

  private FlexibilityGradient(Collector collector) {
    this.flexibility = collector.sum();
    this.bendingByDepth = collector.bendingByDepth;
    this.bendingByWidth = collector.bendingByWidth;
    this.shearByDepth = collector.shearByDepth;
    this.shearByWidth = collector.shearByWidth;
  }

  /** For load and gauge where the set-up has them. */
  public static FlexibilityGradient of(Taper taper, SetUp setUp) {
    return of(taper, setUp, setUp.loadMm());
  }

  /** For J(g, g): load and gauge both at the gauge. */
  public static FlexibilityGradient atGauge(Taper taper, SetUp setUp) {
    return of(taper, setUp, setUp.gaugeMm());
  }

  private static FlexibilityGradient of(Taper taper, SetUp setUp, double loadMm) {
    Collector collector = new Collector(taper, setUp, loadMm);
    collector.run();
    SectionShape shape = taper.shape();
    collector.scale(1 / shape.secondMomentFactor(), shape.shearFactor() / shape.areaFactor());
    return new FlexibilityGradient(collector);
  }

  public Flexibility flexibility() {
    return flexibility;
  }

  /** ∂J/∂(depth of station i), 1/mm², for a ratio r = E/G. */
  public double byDepth(int station, double modulusToShearRatio) {
    return bendingByDepth[station] + modulusToShearRatio * shearByDepth[station];
  }

  /** ∂J/∂(width of station i), 1/mm², for a ratio r = E/G. */
  public double byWidth(int station, double modulusToShearRatio) {
    return bendingByWidth[station] + modulusToShearRatio * shearByWidth[station];
  }

  private static final class Collector extends FlexibilityWalk {
    private final double[] bendingByDepth;
    private final double[] bendingByWidth;
    private final double[] shearByDepth;
    private final double[] shearByWidth;

    Collector(Taper taper, SetUp setUp, double loadMm) {
      super(taper, setUp, loadMm, setUp.gaugeMm());
      int n = taper.stationCount();
      bendingByDepth = new double[n];
      bendingByWidth = new double[n];
      shearByDepth = new double[n];
      shearByWidth = new double[n];
    }

    @Override
    void visit(int piece, double x, double bendingShare, double shearShare) {
      double from = taper().stationXMm(piece);
      double t = (x - from) / (taper().stationXMm(piece + 1) - from);
      double d = taper().depthOn(piece, x);
      double w = taper().widthOn(piece, x);
      // ln(1/I) = ln(cos²·w² + sin²·d²) − 3·ln(d·w), ln(1/A) = −ln(d·w), up to constants
      double turned = cos2() * w * w + sin2() * d * d;
      double bendingPerDepth = bendingShare * (2 * sin2() * d / turned - 3 / d);
      double bendingPerWidth = bendingShare * (2 * cos2() * w / turned - 3 / w);
      add(bendingByDepth, piece, t, bendingPerDepth);
      add(bendingByWidth, piece, t, bendingPerWidth);
      add(shearByDepth, piece, t, -shearShare / d);
      add(shearByWidth, piece, t, -shearShare / w);
    }

    private static void add(double[] sums, int piece, double t, double value) {
      sums[piece] += (1 - t) * value;
      sums[piece + 1] += t * value;
    }

    void scale(double bendingFactor, double shearFactor) {
      for (int i = 0; i < bendingByDepth.length; i++) {
        bendingByDepth[i] *= bendingFactor;
        bendingByWidth[i] *= bendingFactor;
        shearByDepth[i] *= shearFactor;
        shearByWidth[i] *= shearFactor;
      }
    }
  }
}
