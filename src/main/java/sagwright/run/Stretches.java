package sagwright.run;

/**
 * The stretches of one loading branch at one scatter of its readings: how steep they are, and
 * whether they are straight. Immutable.
 *
 * <p>A stretch is straight when its slope and those of its parts (without its lowest or highest
 * eighth, quarter, half) differ by no more than chance lets two estimates differ of which one uses
 * a part of the other's samples, var(part) − var(whole) (J. A. Hausman, Econometrica 46 (1978)
 * 1251).
 */
final class Stretches {
  static final int LEAST_SAMPLES = 4;

  /** Standard deviations that chance hardly ever holds. */
  static final double SURELY = 3.5;

  /** Standard deviations that chance may hold between a stretch and its parts. */
  private static final double CHANCE = 2.3;

  private static final double[] PARTS = {0.125, 0.25, 0.5};

  /** Differences of slope below this share matter to nobody. */
  private static final double IMMATERIAL = 0.0007;

  private final LoadingBranch branch;
  private final BranchSums sums;
  private final ReadingUncertainty uncertainty;
  private final double statedN2;
  private final double varianceN2;
  private final double slowInflation;
  private final ToeTail toe;

  private Stretches(
      LoadingBranch branch,
      ReadingUncertainty uncertainty,
      double varianceN2,
      double slowInflation,
      ToeTail toe) {
    this.branch = branch;
    this.sums = branch.sums();
    this.uncertainty = uncertainty;
    this.statedN2 = statedN2(branch, uncertainty);
    this.varianceN2 = varianceN2;
    this.slowInflation = slowInflation;
    this.toe = toe;
  }

  /** At the branch's own scatter, or at what is stated where that is more. */
  static Stretches of(LoadingBranch branch, ReadingUncertainty uncertainty) {
    double varianceN2 = Math.max(branch.varianceN2(), statedN2(branch, uncertainty));
    return new Stretches(branch, uncertainty, varianceN2, 1, new ToeTail(branch, varianceN2));
  }

  private static double statedN2(LoadingBranch branch, ReadingUncertainty uncertainty) {
    double stated = Math.hypot(uncertainty.loadN(), branch.roughSlope() * uncertainty.gaugeMm());
    return stated * stated;
  }

  /** The same where readings scatter at least so much. */
  Stretches scatteringAtLeast(double leastVarianceN2) {
    return new Stretches(
        branch, uncertainty, Math.max(varianceN2, leastVarianceN2), slowInflation, toe);
  }

  /** The same with scatter counted that does not average out along a stretch. */
  Stretches heedingSlowScatterOn(Stretch widest) {
    SlowScatter slow =
        new SlowScatter(branch, widest.from(), widest.to(), widest.slope(), branch::counts);
    double inflation = slow.inflation(varianceN2);
    if (inflation <= 1) {
      return this;
    }
    double inflated = varianceN2 * inflation;
    return new Stretches(branch, uncertainty, inflated, inflation, new ToeTail(branch, inflated));
  }

  /** Of one reading's load about the branch. */
  double varianceN2() {
    return varianceN2;
  }

  /** The stretch between two shares of the greatest load; null with too few samples in it. */
  Stretch between(double low, double high) {
    int from = branch.blockAt(low);
    int to = branch.blockAt(high);
    if (sums.samples(from, to) < LEAST_SAMPLES) {
      return null;
    }
    LineSums line = sums.line(from, to);
    return new Stretch(
        from,
        to,
        low,
        Math.min(high, 1),
        slope(line),
        varianceN2 / line.sxx(),
        toe.lowersSlope(from, to, branch.rangeN()),
        line.correlationSquared());
  }

  private double slope(LineSums line) {
    return YorkLine.ofEqualErrors(line, uncertainty.gaugeMm(), uncertainty.loadN()).slope();
  }

  boolean isStraight(Stretch whole) {
    for (double share : PARTS) {
      if (!agrees(whole, split(whole, share), whole.to())
          || !agrees(whole, whole.from(), split(whole, 1 - share))) {
        return false;
      }
    }
    return !curves(whole, CHANCE);
  }

  private boolean agrees(Stretch whole, int from, int to) {
    int samples = sums.samples(from, to);
    if (samples < 3 || samples == sums.samples(whole.from(), whole.to())) {
      return true;
    }
    LineSums part = sums.line(from, to);
    double off = slope(part) - whole.slope();
    double chance = Math.sqrt(Math.max(0, varianceN2 / part.sxx() - whole.variance()));
    return Math.abs(off) <= IMMATERIAL * whole.slope() || Math.abs(off) <= CHANCE * chance;
  }

  /** Whether a parabola through a stretch is surely better than the line. */
  boolean surelyCurves(Stretch whole) {
    return curves(whole, SURELY);
  }

  /** Whether a parabola through a stretch is better than the line by more than its own noise. */
  private boolean curves(Stretch whole, double deviations) {
    int free = sums.samples(whole.from(), whole.to()) - 3;
    if (free < 2) {
      return false;
    }
    BranchSums.Parabola parabola = sums.parabola(whole.from(), whole.to());
    double width = (whole.high() - whole.low()) * branch.rangeN() / whole.slope();
    double variance = slowInflation * Math.max(parabola.squares() / free, statedN2);
    double bound = studentBound(deviations, free);
    return Math.abs(parabola.curvature()) * width / 2 > IMMATERIAL * whole.slope()
        && parabola.gain() > bound * bound * variance;
  }

  /**
   * The point of Student's t that so many standard deviations are of the normal: Cornish and
   * Fisher's expansion (Abramowitz and Stegun, 26.7.5), good to 10 % from 3 degrees of freedom.
   */
  private static double studentBound(double z, int free) {
    double z3 = z * z * z;
    return z + (z3 + z) / (4.0 * free) + (5 * z3 * z * z + 16 * z3 + 3 * z) / (96.0 * free * free);
  }

  /** By how much the slopes of a stretch's halves differ, in N/mm. */
  double halvesDiffer(Stretch s) {
    int middle = split(s, 0.5);
    if (sums.samples(s.from(), middle) < 2 || sums.samples(middle, s.to()) < 2) {
      return 0;
    }
    return Math.abs(slope(sums.line(middle, s.to())) - slope(sums.line(s.from(), middle)));
  }

  /** The block at which a stretch has come this share of its own way. */
  private int split(Stretch s, double share) {
    double a = branch.progress(s.from());
    double b = branch.progress(s.to() - 1);
    return Math.max(s.from(), Math.min(s.to(), branch.blockAt(a + share * (b - a))));
  }
}
