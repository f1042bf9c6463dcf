package sagwright.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Draws until the answer has settled (JCGM 101:2008, 7.9.4): batches of 10,000 draws, until twice
 * the standard deviation of the batches' mean, over all batches so far, lies within a tolerance for
 * each of mean, standard uncertainty and both ends of the 95 % interval.
 *
 * @param draws made in all
 * @param mean of all draws
 * @param standardUncertainty their standard deviation
 * @param interval95 probabilistically symmetric, 7.7
 * @param settled false where the most batches allowed were made before it settled
 */
public record AdaptiveMonteCarlo(
    int draws, double mean, double standardUncertainty, Interval interval95, boolean settled) {
  /** 10⁴ of the standard, which is more than its 100/(1 − 0.95). */
  public static final int BATCH = 10_000;

  private static final double LOW = 0.025;
  private static final double HIGH = 0.975;

  /** Where draws come from; the same batch always gives the same draws. */
  public interface Draws {
    /**
     * @param batch from 0
     * @return {@link #BATCH} values of the quantity
     */
    double[] batch(int batch);
  }

  /**
   * @param digits of the standard uncertainty that are meant: {@link NumericalTolerance}
   * @param shareOfTolerance 1 for an answer of its own, {@link BudgetCheck#SETTLED_SHARE} to check
   *     a budget with
   * @param mostBatches two or more
   */
  public static AdaptiveMonteCarlo run(
      Draws draws, int digits, double shareOfTolerance, int mostBatches) {
    List<double[]> batches = new ArrayList<>();
    List<double[]> figures = new ArrayList<>();
    boolean settled = false;
    while (!settled && batches.size() < mostBatches) {
      double[] batch = draws.batch(batches.size());
      batches.add(batch);
      figures.add(figures(batch.clone()));
      if (batches.size() >= 2) {
        double tolerance =
            NumericalTolerance.of(pooledDeviation(figures, batches), digits) * shareOfTolerance;
        settled = isSettled(figures, tolerance);
      }
    }
    double[] all = batches.stream().flatMapToDouble(Arrays::stream).toArray();
    double[] whole = figures(all);
    return new AdaptiveMonteCarlo(
        all.length, whole[0], whole[1], new Interval(whole[2], whole[3]), settled);
  }

  /** Mean, standard deviation, low and high end; sorts what it is given. */
  private static double[] figures(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    double squares = 0;
    for (double v : values) {
      squares += (v - mean) * (v - mean);
    }
    Arrays.sort(values);
    return new double[] {
      mean,
      Math.sqrt(squares / (values.length - 1)),
      Quantile.ofSorted(values, LOW),
      Quantile.ofSorted(values, HIGH)
    };
  }

  /** Standard deviation of all draws so far, from the batches' figures. */
  private static double pooledDeviation(List<double[]> figures, List<double[]> batches) {
    double mean = figures.stream().mapToDouble(f -> f[0]).average().orElseThrow();
    double squares = 0;
    int count = 0;
    for (int i = 0; i < batches.size(); i++) {
      int n = batches.get(i).length;
      double[] f = figures.get(i);
      squares += (n - 1) * f[1] * f[1] + n * (f[0] - mean) * (f[0] - mean);
      count += n;
    }
    return Math.sqrt(squares / (count - 1));
  }

  private static boolean isSettled(List<double[]> figures, double tolerance) {
    int h = figures.size();
    for (int k = 0; k < 4; k++) {
      int which = k;
      double mean = figures.stream().mapToDouble(f -> f[which]).average().orElseThrow();
      double squares =
          figures.stream().mapToDouble(f -> (f[which] - mean) * (f[which] - mean)).sum();
      if (2 * Math.sqrt(squares / (h * (h - 1.0))) > tolerance) {
        return false;
      }
    }
    return true;
  }
}
