package sagwright.run;

/**
 * The loading branch in short blocks, each with how far the load had come by then (progress, 0 at
 * the rest and 1 at the greatest load), its wild samples marked, and the sums from which the line
 * through any stretch of blocks follows at once.
 */
final class LoadingBranch {
  private static final int MOST_BLOCKS = 192;
  private static final double WILD_SIGMAS = 5;
  private static final double OFF_COURSE_SIGMAS = 6;
  private static final double OFF_COURSE = 0.02;
  private static final double CLEAR_OF_TOE = 0.15;
  private static final double PAIR_SPAN = 0.4;

  private final double[] load;
  private final double[] deflection;
  private final LoadCourse course;
  private final Blocks blocks;
  private final double[] progress;
  private final boolean[] fallsBack;
  private final boolean[] wild;
  private final double roughSlope;
  private final double varianceN2;
  private final double centreN;
  private final double centreMm;

  private final BranchSums sums;

  LoadingBranch(
      double[] load, double[] deflection, LoadCourse course, ReadingUncertainty uncertainty)
      throws PoorRunException {
    this.load = load;
    this.deflection = deflection;
    this.course = course;
    int from = course.branchFrom();
    int to = course.branchTo();
    blocks = Blocks.over(load, deflection, from, to, MOST_BLOCKS);
    int count = blocks.count();
    progress = new double[count];
    fallsBack = new boolean[count];
    measureProgress();
    roughSlope = slopeOfFarPairs();
    centreN = blocks.loadN(count / 2);
    centreMm = blocks.deflectionMm(count / 2);
    double[] off = new double[load.length];
    for (int i = from; i < to; i++) {
      off[i] = offN(i, roughSlope);
    }
    wild = new boolean[to - from];
    markWild(off, uncertainty);
    varianceN2 = varianceOf(off);
    sums = new BranchSums(count);
    sumUp();
  }

  private void measureProgress() {
    double courseNoise = 1.3 * course.noiseN() / Math.sqrt(blocks.size());
    double band = Math.max(5 * courseNoise / course.rangeN(), 0.01);
    double highest = Double.NEGATIVE_INFINITY;
    for (int b = 0; b < blocks.count(); b++) {
      double now = (blocks.loadN(b) - course.zeroN()) / course.rangeN();
      highest = Math.max(highest, now);
      progress[b] = highest;
      fallsBack[b] = now < highest - band;
    }
  }

  /** The median slope between blocks that lie a good part of the load apart: no few can move it. */
  private double slopeOfFarPairs() throws PoorRunException {
    int count = blocks.count();
    double[] slopes = new double[count];
    double[] falls = new double[count];
    int pairs = 0;
    int other = 0;
    for (int b = 0; b < count; b++) {
      if (progress[b] < CLEAR_OF_TOE || fallsBack[b]) {
        continue;
      }
      while (other < count && (progress[other] < progress[b] + PAIR_SPAN || fallsBack[other])) {
        other++;
      }
      if (other == count) {
        break;
      }
      double rise = blocks.deflectionMm(other) - blocks.deflectionMm(b);
      falls[pairs] = rise;
      slopes[pairs++] = (blocks.loadN(other) - blocks.loadN(b)) / rise;
    }
    if (pairs == 0) {
      throw new PoorRunException(
          "no loading branch: the load jumps from its rest to its greatest with too few samples"
              + " between");
    }
    double middle = Medians.of(falls, 0, pairs);
    double still = 0.5 * Noise.sigma(deflection, deflection.length);
    if (Math.abs(middle) <= still) {
      throw new PoorRunException("the gauge does not move while the load rises");
    }
    if (middle < 0) {
      throw new PoorRunException(
          "the deflection falls while the load rises: load and gauge show no stiffness");
    }
    return Medians.of(slopes, 0, pairs);
  }

  private void markWild(double[] off, ReadingUncertainty uncertainty) {
    double[] base = blocks.courseOf(off);
    int from = blocks.start(0);
    double[] apart = new double[wild.length];
    for (int b = 0; b < blocks.count(); b++) {
      for (int i = blocks.start(b); i < blocks.end(b); i++) {
        apart[i - from] = Math.abs(off[i] - base[b]);
      }
    }
    double sigma =
        Math.max(
            Noise.sigmaOfDeviations(apart.clone(), apart.length),
            Math.min(
                Math.hypot(uncertainty.loadN(), roughSlope * uncertainty.gaugeMm()),
                0.01 * course.rangeN()));
    double bound = Math.max(WILD_SIGMAS * sigma, 1e-6 * course.rangeN());
    for (int b = 0; b < blocks.count(); b++) {
      double offCourse =
          Math.max(
              OFF_COURSE_SIGMAS * course.noiseN() + blocks.loadMovesNear(b),
              OFF_COURSE * course.rangeN());
      for (int i = blocks.start(b); i < blocks.end(b); i++) {
        wild[i - from] = apart[i - from] > bound || Math.abs(load[i] - blocks.loadN(b)) > offCourse;
      }
    }
  }

  /** Variance of a sample about the branch from second differences, which no slow bend touches. */
  private double varianceOf(double[] off) {
    int from = blocks.start(0);
    double sum = 0;
    int count = 0;
    for (int i = 1; i < wild.length - 1; i++) {
      if (!wild[i - 1] && !wild[i] && !wild[i + 1]) {
        double second = off[from + i - 1] - 2 * off[from + i] + off[from + i + 1];
        sum += second * second;
        count++;
      }
    }
    return count == 0 ? 0 : sum / (6 * count);
  }

  private void sumUp() {
    int from = blocks.start(0);
    for (int b = 0; b < blocks.count(); b++) {
      sums.startBlock(b);
      for (int i = blocks.start(b); i < blocks.end(b) && !fallsBack[b]; i++) {
        if (!wild[i - from]) {
          sums.add(b, deflection[i] - centreMm, load[i] - centreN);
        }
      }
    }
  }

  /** The first block whose progress is at least this; the number of blocks where none is. */
  int blockAt(double wanted) {
    int low = 0;
    int high = blocks.count();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (progress[middle] < wanted) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** How far the load had come at a block, 0 at the rest and 1 at the greatest load. */
  double progress(int block) {
    return progress[block];
  }

  int blockCount() {
    return blocks.count();
  }

  /** Sums over the clean samples, in the branch's own centred figures. */
  BranchSums sums() {
    return sums;
  }

  /** How well the smoothed course alone lies on a line from one block to another, squared. */
  double courseCorrelationSquared(int from, int to) {
    double[] x = new double[to - from];
    double[] y = new double[to - from];
    boolean[] counts = new boolean[to - from];
    for (int b = from; b < to; b++) {
      x[b - from] = blocks.deflectionMm(b);
      y[b - from] = blocks.loadN(b);
      counts[b - from] = !fallsBack[b];
    }
    return LineSums.over(x, y, counts, 0, to - from).correlationSquared();
  }

  /** First sample of a block. */
  int start(int block) {
    return block == blocks.count() ? blocks.end(block - 1) : blocks.start(block);
  }

  /** Whether a sample is not wild. */
  boolean isClean(int i) {
    return !wild[i - blocks.start(0)];
  }

  /**
   * How far a sample's load lies above the line of this slope through the branch's centre, in N.
   */
  double offN(int i, double slope) {
    return load[i] - centreN - slope * (deflection[i] - centreMm);
  }

  boolean fallsBack(int block) {
    return fallsBack[block];
  }

  /** Whether a sample is on the way up and not wild. */
  boolean counts(int i) {
    int block = Math.min(blocks.count() - 1, (i - blocks.start(0)) / blocks.size());
    return isClean(i) && !fallsBack[block];
  }

  /** Greatest smoothed load, reckoned from the rest, in N. */
  double rangeN() {
    return course.rangeN();
  }

  /** Slope in N/mm that no few samples can move, good to a few percent. */
  double roughSlope() {
    return roughSlope;
  }

  /** Variance of one sample's load about the branch, as its own scatter shows it. */
  double varianceN2() {
    return varianceN2;
  }

  int wildSamples() {
    int count = 0;
    for (boolean w : wild) {
      count += w ? 1 : 0;
    }
    return count;
  }

  int size() {
    return wild.length;
  }
}
