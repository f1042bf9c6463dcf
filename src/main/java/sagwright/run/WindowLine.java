package sagwright.run;

/** York's line through the clean samples of a fit window, and what it set aside. */
final class WindowLine {
  private static final double WILD_SIGMAS = 5;

  private final double[] load;
  private final double[] deflection;
  private final ReadingUncertainty uncertainty;
  private final int from;
  private final int to;
  private final boolean[] used;
  private YorkLine line;
  private int setAside;

  WindowLine(
      double[] load,
      double[] deflection,
      LoadingBranch branch,
      StraightPart part,
      ReadingUncertainty uncertainty) {
    this.load = load;
    this.deflection = deflection;
    this.uncertainty = uncertainty;
    from = branch.start(part.fromBlock());
    to = branch.start(part.toBlock());
    used = new boolean[load.length];
    for (int i = from; i < to; i++) {
      used[i] = branch.counts(i);
      setAside += branch.isClean(i) ? 0 : 1;
    }
    line = fit();
    if (setWildAside()) {
      line = fit();
    }
  }

  private YorkLine fit() {
    return YorkLine.ofEqualErrors(
        LineSums.over(deflection, load, used, from, to),
        uncertainty.gaugeMm(),
        uncertainty.loadN());
  }

  /** Rows of wild samples that looked like a course of their own show only against the line. */
  private boolean setWildAside() {
    double[] apart = new double[to - from];
    int count = 0;
    for (int i = from; i < to; i++) {
      if (used[i]) {
        apart[count++] = offN(i);
      }
    }
    double stated = Math.hypot(uncertainty.loadN(), line.slope() * uncertainty.gaugeMm());
    double bound = WILD_SIGMAS * Math.max(stated, Noise.sigmaOfDeviations(apart, count));
    int before = setAside;
    for (int i = from; i < to; i++) {
      if (used[i] && offN(i) > bound) {
        used[i] = false;
        setAside++;
      }
    }
    return setAside > before;
  }

  private double offN(int i) {
    return Math.abs(load[i] - line.intercept() - line.slope() * deflection[i]);
  }

  YorkLine line() {
    return line;
  }

  /** Variance of one sample's load about the line, in N²: stated or shown, the larger. */
  double sampleVarianceN2() {
    double stated = Math.hypot(uncertainty.loadN(), line.slope() * uncertainty.gaugeMm());
    double shown = 0;
    for (int i = from; i < to; i++) {
      shown += used[i] ? offN(i) * offN(i) : 0;
    }
    return Math.max(stated * stated, shown / (line.points() - 2));
  }

  boolean isUsed(int i) {
    return used[i];
  }

  int setAside() {
    return setAside;
  }

  double leastLoadN() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = from; i < to; i++) {
      least = used[i] ? Math.min(least, load[i]) : least;
    }
    return least;
  }

  double greatestLoadN() {
    double greatest = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i++) {
      greatest = used[i] ? Math.max(greatest, load[i]) : greatest;
    }
    return greatest;
  }
}
