package sagwright.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The samples whose load and deflection were both newly read. A gauge (or a load cell) slower than
 * the run leaves its old value in the samples between; there the other has moved on, so such
 * samples lie off the line. A coarse gauge repeats values too, but moves by single steps and is
 * left alone.
 */
final class FreshReadings {
  private static final int LEAST_JUMPS = 5;

  /** Share of repeats that a slow reader has at the least. */
  private static final double LEAST_REPEATED = 0.25;

  private static final int AGAIN_AND_AGAIN = 3;

  /** Two steps closer than this share of the greatest are one. */
  private static final double ROUNDING = 1e-9;

  private static final double FEW_STEPS = 2.5;
  private static final int LONGER_THAN_USUAL = 3;

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

  /** The samples that repeat an old value, or null where the series is not a slow reader's. */
  private static boolean[] staleIn(double[] values) {
    int n = values.length;
    int repeated = 0;
    for (int i = 1; i < n; i++) {
      repeated += values[i] == values[i - 1] ? 1 : 0;
    }
    if (repeated < LEAST_REPEATED * n) {
      return null;
    }
    int rowLength = rowsOfOldValues(values, FEW_STEPS * commonStep(values, n - 1 - repeated));
    return rowLength == 0 ? null : repeatsIn(values, LONGER_THAN_USUAL * rowLength);
  }

  /** The step of a coarse reader: the smallest that comes again and again; 0 for a fine one. */
  private static double commonStep(double[] values, int steps) {
    double[] sizes = new double[steps];
    int count = 0;
    for (int i = 1; i < values.length; i++) {
      if (values[i] != values[i - 1]) {
        sizes[count++] = Math.abs(values[i] - values[i - 1]);
      }
    }
    Arrays.sort(sizes);
    double rounding = steps == 0 ? 0 : ROUNDING * sizes[steps - 1];
    int start = 0;
    for (int i = 1; i <= steps; i++) {
      if (i == steps || sizes[i] - sizes[start] > rounding) {
        if (i - start >= AGAIN_AND_AGAIN) {
          return sizes[start];
        }
        start = i;
      }
    }
    return 0;
  }

  /**
   * How many old values usually stand before a new one, where the series moves by jumps out of such
   * rows; 0 where it does not.
   */
  private static int rowsOfOldValues(double[] values, double coarse) {
    int jumps = 0;
    int afterRepeat = 0;
    int repeatsBefore = 0;
    int repeats = 0;
    double travel = 0;
    double low = values[0];
    double high = values[0];
    for (int i = 1; i < values.length; i++) {
      double step = Math.abs(values[i] - values[i - 1]);
      low = Math.min(low, values[i]);
      high = Math.max(high, values[i]);
      if (step == 0) {
        repeats++;
        continue;
      }
      if (step > coarse) {
        jumps++;
        travel += step;
        afterRepeat += repeats > 0 ? 1 : 0;
        repeatsBefore += repeats;
      }
      repeats = 0;
    }
    boolean movesByJumps = jumps >= LEAST_JUMPS && travel > (high - low) / 2;
    return movesByJumps && 2 * afterRepeat >= jumps
        ? Math.max(1, Math.round((float) repeatsBefore / jumps))
        : 0;
  }

  /** All repeats but those of longer rows: a rest or a hold, where nothing moves or is stale. */
  private static boolean[] repeatsIn(double[] values, int longest) {
    int n = values.length;
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
