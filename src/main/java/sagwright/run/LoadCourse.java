package sagwright.run;

/**
 * Where in a run the load rests, rises and is greatest, found from the load alone.
 *
 * <p>The rest is what lies at the level the run begins with, up to the last moment before the
 * greatest load at which the load was still there: a seating press before the true loading counts
 * as before it. The loading branch runs from there to where the load first comes near its greatest,
 * so that a hold, and creep in it, stays outside.
 */
final class LoadCourse {
  private static final int MOST_BLOCKS = 400;

  /** A range below so many times the noise (or so many stated uncertainties) is no contact. */
  private static final double NOISE_TO_BE_CONTACT = 6;

  private static final double STATED_TO_BE_CONTACT = 3;
  private static final double LEAST_LEAVING = 0.005;
  private static final double MOST_LEAVING = 0.03;
  private static final double REST_BAND = 0.05;
  private static final double NEAR_GREATEST = 0.97;

  /** Share of the load that a hand does not put on from one block to the next. */
  private static final double MOST_STEP = 0.25;

  /** A run that begins with more of its load on has no rest to reckon from. */
  private static final double LEAST_RISE = 0.25;

  private static final int LEAST_REST = 3;

  private final double[] load;
  private final double[] deflection;
  private final Blocks blocks;
  private final double noiseN;
  private int peak;
  private int lastAtRest;
  private double zeroN;
  private double restDeflectionMm;
  private int restSamples;

  private LoadCourse(double[] load, double[] deflection) {
    this.load = load;
    this.deflection = deflection;
    blocks = Blocks.over(load, deflection, 0, load.length, MOST_BLOCKS);
    noiseN = Noise.sigma(load, load.length);
  }

  static LoadCourse of(double[] load, double[] deflection, ReadingUncertainty uncertainty)
      throws PoorRunException {
    LoadCourse course = new LoadCourse(load, deflection);
    course.findPeak();
    course.findRest(uncertainty);
    return course;
  }

  private void findPeak() {
    for (int b = 1; b < blocks.count(); b++) {
      if (blocks.loadN(b) > blocks.loadN(peak)) {
        peak = b;
      }
    }
  }

  private void findRest(ReadingUncertainty uncertainty) throws PoorRunException {
    double level = restLevel();
    double range = blocks.loadN(peak) - level;
    double wholeRange = rangeOfCourse();
    if (wholeRange < NOISE_TO_BE_CONTACT * noiseN
        || wholeRange < STATED_TO_BE_CONTACT * uncertainty.loadN()
        || wholeRange == 0) {
      throw new PoorRunException(
          "no contact: the load never rises above its noise (it moves by "
              + Figures.of(wholeRange)
              + " N)");
    }
    boolean risesAboveStart = blocks.loadN(peak) - blocks.loadN(0) >= LEAST_RISE * range;
    if (range < wholeRange / 3 || !risesAboveStart) {
      throw new PoorRunException(
          "no loading branch: the load never rises well above where the run begins");
    }
    double courseNoise = 1.3 * noiseN / Math.sqrt(blocks.size());
    double leaving =
        Math.min(MOST_LEAVING * range, Math.max(4 * courseNoise, LEAST_LEAVING * range));
    lastAtRest = lastAtRest(level + leaving, level + MOST_STEP * range);
    takeZero(level, Math.max(leaving, REST_BAND * range));
  }

  /**
   * The last block at rest before the greatest load. A reading that drops out for a moment is no
   * rest: no hand brings a load back at once to where it was. So one that the load leaves by a jump
   * counts only where there is no other.
   */
  private int lastAtRest(double restN, double jumpN) {
    int last = -1;
    for (int b = peak - 1; b >= 0; b--) {
      boolean leaves = blocks.loadN(b) <= restN && blocks.loadN(b + 1) > restN;
      if (leaves && blocks.loadN(b + 1) <= jumpN) {
        return b;
      }
      last = leaves ? Math.max(last, b) : last;
    }
    return last;
  }

  /**
   * The level the run begins with, or its lowest before the rise where it stays there longer or
   * where the run begins with the load on.
   */
  private double restLevel() {
    double first = blocks.loadN(0);
    double low = first;
    for (int b = 1; b < peak; b++) {
      low = Math.min(low, blocks.loadN(b));
    }
    double rise = blocks.loadN(peak) - low;
    double band = REST_BAND * rise;
    if (first - low <= band) {
      return first;
    }
    double[] lowest = new double[peak];
    int atLow = 0;
    int atFirst = 0;
    for (int b = 0; b < peak; b++) {
      if (blocks.loadN(b) <= low + band) {
        lowest[atLow++] = blocks.loadN(b);
      }
      atFirst += Math.abs(blocks.loadN(b) - first) <= band ? 1 : 0;
    }
    return first - low > rise / 2 || atLow > atFirst ? Medians.of(lowest, 0, atLow) : first;
  }

  private double rangeOfCourse() {
    double low = blocks.loadN(0);
    double high = low;
    for (int b = 1; b < blocks.count(); b++) {
      low = Math.min(low, blocks.loadN(b));
      high = Math.max(high, blocks.loadN(b));
    }
    return high - low;
  }

  private void takeZero(double level, double band) {
    double[] loads = new double[load.length];
    double[] deflections = new double[load.length];
    for (int b = 0; b <= lastAtRest; b++) {
      if (Math.abs(blocks.loadN(b) - level) <= band) {
        for (int i = blocks.start(b); i < blocks.end(b); i++) {
          loads[restSamples] = load[i];
          deflections[restSamples++] = deflection[i];
        }
      }
    }
    zeroN = restSamples > 0 ? Medians.of(loads, 0, restSamples) : blocks.loadN(0);
    restDeflectionMm =
        restSamples > 0 ? Medians.of(deflections, 0, restSamples) : blocks.deflectionMm(0);
  }

  Blocks blocks() {
    return blocks;
  }

  int peakBlock() {
    return peak;
  }

  /** Standard deviation of the load from sample to sample, in N. */
  double noiseN() {
    return noiseN;
  }

  double zeroN() {
    return zeroN;
  }

  double restDeflectionMm() {
    return restDeflectionMm;
  }

  boolean hasRest() {
    return restSamples >= LEAST_REST;
  }

  /** Greatest smoothed load, reckoned from the rest, in N. */
  double rangeN() {
    return blocks.loadN(peak) - zeroN;
  }

  /** First sample of the loading branch. */
  int branchFrom() {
    return lastAtRest < 0 ? 0 : blocks.start(lastAtRest);
  }

  /** One past the last sample of the loading branch. */
  int branchTo() {
    int b = lastAtRest + 1;
    while (b < peak && blocks.loadN(b) < zeroN + NEAR_GREATEST * rangeN()) {
      b++;
    }
    return blocks.end(b);
  }
}
