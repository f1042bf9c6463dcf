package sagwright.beam;

/**
 * Where along the shaft a set-up's stiffness comes from: the share of M·m/I (with an even modulus,
 * of M·m/(E·I)) at each x, shear added. What is not between the supports does not count.
 */
public final class ListeningBand {
  private final double supportAMm;
  private final double[] xMm;
  private final double[] sum;

  private ListeningBand(double supportAMm, double[] xMm, double[] sum) {
    this.supportAMm = supportAMm;
    this.xMm = xMm;
    this.sum = sum;
  }

  /**
   * @param modulusToShearRatio r = E/G
   */
  public static ListeningBand of(Taper taper, SetUp setUp, double modulusToShearRatio) {
    double[] cuts = new double[CUTS - 1];
    for (int i = 1; i < CUTS; i++) {
      cuts[i - 1] = setUp.supportAMm() + setUp.spanMm() * i / CUTS;
    }
    FlexibilityNodes nodes = FlexibilityNodes.of(taper, setUp, cuts);
    double[] ends = new double[CUTS];
    double[] sums = new double[CUTS];
    double total = 0;
    int node = 0;
    for (int i = 0; i < CUTS; i++) {
      double end = i == CUTS - 1 ? setUp.supportBMm() : cuts[i];
      while (node < nodes.xMm().length && nodes.xMm()[node] < end) {
        total += nodes.bendingPerMm()[node] + modulusToShearRatio * nodes.shearPerMm()[node];
        node++;
      }
      ends[i] = end;
      sums[i] = total;
    }
    for (int i = 0; i < CUTS; i++) {
      sums[i] /= total;
    }
    return new ListeningBand(setUp.supportAMm(), ends, sums);
  }

  /** Fine enough for a drawing: a cut every span/400; the shares at the cuts are exact. */
  private static final int CUTS = 400;

  /** The share of the answer that comes from places short of x, 0 to 1. */
  public double shareBelow(double atMm) {
    if (atMm <= supportAMm) {
      return 0;
    }
    double from = supportAMm;
    double below = 0;
    for (int i = 0; i < xMm.length; i++) {
      if (atMm <= xMm[i]) {
        return below + (sum[i] - below) * (atMm - from) / (xMm[i] - from);
      }
      from = xMm[i];
      below = sum[i];
    }
    return 1;
  }

  /** The share of the answer that comes from between two places, 0 to 1. */
  public double shareBetween(double fromMm, double toMm) {
    return shareBelow(toMm) - shareBelow(fromMm);
  }

  /**
   * Places of strokes, each of which stands for an equal share of the answer: stroke i lies where
   * the share below it is (i + ½)/count.
   */
  public double[] strokesMm(int count) {
    double[] strokes = new double[count];
    int cut = 0;
    for (int i = 0; i < count; i++) {
      double share = (i + 0.5) / count;
      while (sum[cut] < share) {
        cut++;
      }
      double from = cut == 0 ? supportAMm : xMm[cut - 1];
      double below = cut == 0 ? 0 : sum[cut - 1];
      strokes[i] = from + (xMm[cut] - from) * (share - below) / (sum[cut] - below);
    }
    return strokes;
  }
}
