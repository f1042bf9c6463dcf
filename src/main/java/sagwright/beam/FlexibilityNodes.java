package sagwright.beam;

import java.util.Arrays;

/**
 * The integrals of {@link Flexibility} left open: the places where the integrands were taken, and
 * what each adds to bending and shear. With a modulus that varies along the shaft, {@code
 * deflection/load = Σ (bending[i] + r·shear[i]) / E(xMm[i])}.
 *
 * @param xMm places from the tip end, rising
 * @param bendingPerMm contributions to ∫M·m/I dx, 1/mm each
 * @param shearPerMm contributions to κ·∫V·v/A dx, 1/mm each
 */
public record FlexibilityNodes(double[] xMm, double[] bendingPerMm, double[] shearPerMm) {
  /**
   * @param breaksMm further places where the reader's own integrand has a kink or a step, rising
   */
  public static FlexibilityNodes of(Taper taper, SetUp setUp, double... breaksMm) {
    Collector collector = new Collector(taper, setUp, breaksMm);
    collector.run();
    SectionShape shape = taper.shape();
    double bendingFactor = 1 / shape.secondMomentFactor();
    double shearFactor = shape.shearFactor() / shape.areaFactor();
    double[] bending = Arrays.copyOf(collector.bending, collector.count);
    double[] shear = Arrays.copyOf(collector.shear, collector.count);
    for (int i = 0; i < collector.count; i++) {
      bending[i] *= bendingFactor;
      shear[i] *= shearFactor;
    }
    return new FlexibilityNodes(Arrays.copyOf(collector.x, collector.count), bending, shear);
  }

  private static final class Collector extends FlexibilityWalk {
    private final double[] breaksMm;
    private double[] x = new double[128];
    private double[] bending = new double[128];
    private double[] shear = new double[128];
    private int count;

    Collector(Taper taper, SetUp setUp, double[] breaksMm) {
      super(taper, setUp, setUp.loadMm(), setUp.gaugeMm());
      this.breaksMm = breaksMm;
    }

    @Override
    double nextBreak(double from, double to) {
      for (double at : breaksMm) {
        if (from < at && at < to) {
          return at;
        }
      }
      return to;
    }

    @Override
    void visit(int piece, double at, double bendingShare, double shearShare) {
      if (count == x.length) {
        x = Arrays.copyOf(x, 2 * count);
        bending = Arrays.copyOf(bending, 2 * count);
        shear = Arrays.copyOf(shear, 2 * count);
      }
      x[count] = at;
      bending[count] = bendingShare;
      shear[count] = shearShare;
      count++;
    }
  }
}
