package sagwright.run;

/**
 * The gap of the unloading over the loading branch at half the greatest load. On either branch the
 * samples about half load are carried to it along the stiffness; their median is the branch's
 * deflection there.
 */
final class Hysteresis {
  private static final double HALF_BAND = 0.15;
  private static final double WELL_BELOW = 0.7;

  private final double[] load;
  private final double[] deflection;
  private final LoadCourse course;
  private final double stiffness;
  private final double halfN;

  Hysteresis(
      double[] load,
      double[] deflection,
      LoadCourse course,
      double stiffnessNPerMm,
      double greatestN) {
    this.load = load;
    this.deflection = deflection;
    this.course = course;
    this.stiffness = stiffnessNPerMm;
    this.halfN = course.zeroN() + greatestN / 2;
  }

  /** First block after the greatest load that is below half of it; the block count where none. */
  private int pastHalf() {
    Blocks blocks = course.blocks();
    int b = course.peakBlock();
    while (b < blocks.count() && blocks.loadN(b) > halfN) {
      b++;
    }
    return b;
  }

  /** Whether the load fell well below its greatest while the deflection did not come back. */
  boolean broke() {
    Blocks blocks = course.blocks();
    int peak = course.peakBlock();
    int b = peak;
    while (b < blocks.count() && blocks.loadN(b) > level(WELL_BELOW)) {
      b++;
    }
    if (b == blocks.count()) {
      return false;
    }
    double back = blocks.deflectionMm(peak) - blocks.deflectionMm(b);
    return back < (1 - WELL_BELOW) * (level(1) - level(0)) / stiffness / 4;
  }

  /** The gap in mm, or null where the load does not come back to half along an unloading. */
  Double gapMm() {
    if (broke()) {
      return null;
    }
    int below = pastHalf();
    Blocks blocks = course.blocks();
    if (below == blocks.count()) {
      return null;
    }
    int top = below;
    while (top > course.peakBlock() && blocks.loadN(top) < level(0.9)) {
      top--;
    }
    int low = below;
    while (low < blocks.count() - 1 && blocks.loadN(low) > level(0.1)) {
      low++;
    }
    double up = deflectionAtHalf(course.branchFrom(), course.branchTo());
    double down = deflectionAtHalf(blocks.start(top), blocks.end(low));
    return Double.isNaN(up) || Double.isNaN(down) ? null : Double.valueOf(down - up);
  }

  private double level(double share) {
    return course.zeroN() + 2 * share * (halfN - course.zeroN());
  }

  private double deflectionAtHalf(int from, int to) {
    for (double reach : new double[] {HALF_BAND, 2 * HALF_BAND}) {
      double band = 2 * reach * (halfN - course.zeroN());
      double[] at = new double[to - from];
      int count = 0;
      for (int i = from; i < to; i++) {
        if (Math.abs(load[i] - halfN) <= band) {
          at[count++] = deflection[i] - (load[i] - halfN) / stiffness;
        }
      }
      if (count >= 3) {
        return Medians.of(at, 0, count);
      }
    }
    return crossing(from, to);
  }

  /** Where too few samples lie near: the straight line between the two about half load. */
  private double crossing(int from, int to) {
    for (int i = from + 1; i < to; i++) {
      if ((load[i - 1] - halfN) * (load[i] - halfN) <= 0 && load[i] != load[i - 1]) {
        double t = (halfN - load[i - 1]) / (load[i] - load[i - 1]);
        return deflection[i - 1] + t * (deflection[i] - deflection[i - 1]);
      }
    }
    return Double.NaN;
  }
}
