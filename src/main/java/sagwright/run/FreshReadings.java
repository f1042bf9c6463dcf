package sagwright.run;

import java.util.ArrayList;
import java.util.List;

/**
 * The samples whose load and deflection were both newly read. A gauge (or a load cell) slower than
 * the run leaves its old value in the samples between; there the other has moved on, so such
 * samples lie off the line. A coarse gauge repeats values too, but moves by single steps and is
 * left alone.
 */
final class FreshReadings {
  private static final int LEAST_JUMPS = 5;
  private static final double FEW_STEPS = 2.5;

  private final double[] loadN;
  private final double[] deflectionMm;
  private final int[] sample;
  private final List<RunWarning> warnings;

  private FreshReadings(
      double[] loadN, double[] deflectionMm, int[] sample, List<RunWarning> warnings) {
    this.loadN = loadN;
    this.deflectionMm = deflectionMm;
    this.sample = sample;
    this.warnings = warnings;
  }

  static FreshReadings of(Samples run) {
    FreshReadings all = new FreshReadings(run.loadN(), run.deflectionMm(), null, new ArrayList<>());
    FreshReadings gaugeFresh = all.without("gauge", staleIn(all.deflectionMm));
    return gaugeFresh.without("load cell", staleIn(gaugeFresh.loadN));
  }

  double[] loadN() {
    return loadN;
  }

  double[] deflectionMm() {
    return deflectionMm;
  }

  /** Which sample of the run the i-th fresh one is. */
  int sample(int i) {
    return sample == null ? i : sample[i];
  }

  List<RunWarning> warnings() {
    return warnings;
  }

  private FreshReadings without(String which, boolean[] stale) {
    if (stale == null) {
      return this;
    }
    int n = 0;
    for (boolean s : stale) {
      n += s ? 0 : 1;
    }
    double[] load = new double[n];
    double[] deflection = new double[n];
    int[] from = new int[n];
    int k = 0;
    for (int i = 0; i < stale.length; i++) {
      if (!stale[i]) {
        load[k] = loadN[i];
        deflection[k] = deflectionMm[i];
        from[k++] = sample(i);
      }
    }
    List<RunWarning> more = new ArrayList<>(warnings);
    more.add(new RunWarning.StaleReadings(which, stale.length - n, stale.length));
    return new FreshReadings(load, deflection, from, more);
  }

  /**
   * The samples that repeat an old value, or null where the series is not that of a slow reader.
   */
  private static boolean[] staleIn(double[] values) {
    int n = values.length;
    double big = FEW_STEPS * Noise.leastStep(values, n);
    int jumps = 0;
    int afterRepeat = 0;
    int repeatsBefore = 0;
    int repeats = 0;
    double travel = 0;
    double low = values[0];
    double high = values[0];
    for (int i = 1; i < n; i++) {
      double step = Math.abs(values[i] - values[i - 1]);
      low = Math.min(low, values[i]);
      high = Math.max(high, values[i]);
      if (step == 0) {
        repeats++;
        continue;
      }
      if (step > big) {
        jumps++;
        travel += step;
        afterRepeat += repeats > 0 ? 1 : 0;
        repeatsBefore += repeats;
      }
      repeats = 0;
    }
    boolean movesByJumps = travel > (high - low) / 2;
    if (jumps < LEAST_JUMPS || 2 * afterRepeat < jumps || !movesByJumps) {
      return null;
    }
    // longer rows of one value are a rest or a hold, where nothing moves and nothing is stale
    int longest = 3 * Math.max(1, Math.round((float) repeatsBefore / jumps));
    boolean[] stale = new boolean[n];
    int start = 0;
    for (int i = 1; i <= n; i++) {
      if (i == n || values[i] != values[i - 1]) {
        for (int j = start + 1; j < i && i - 1 - start <= longest; j++) {
          stale[j] = true;
        }
        start = i;
      }
    }
    return stale;
  }
}
