package sagwright.run;

import java.util.function.IntPredicate;

/**
 * A stretch of a run cut into short blocks of equally many samples, each spoken for by its medians,
 * which a running median then smooths: what is left is the course of the run without its spikes.
 */
final class Blocks {
  private static final int FEW = 32;
  private static final int MANY = 64;
  private static final double WORTH_LOOKING = 0.3;

  private final int first;
  private final int size;
  private final int last;
  private final int count;
  private final int reach;
  private final double[] loadN;
  private final double[] loads;
  private final double[] deflections;
  private double[] deflectionMm;

  private Blocks(double[] loadN, double[] deflectionMm, int first, int last, int most) {
    this.first = first;
    this.last = last;
    int wanted = Math.max(1, (last - first + most - 1) / most);
    size = wanted | 1; // an odd number of samples has a sample in its middle
    count = Math.max(1, (last - first) / size);
    reach = count < FEW ? 1 : size > 1 || count < MANY ? 2 : 3;
    this.loadN = courseOf(loadN);
    loads = loadN;
    deflections = deflectionMm;
  }

  /** Of samples {@code first … last}, the last excluded, in {@code most} blocks or fewer. */
  static Blocks over(double[] loadN, double[] deflectionMm, int first, int last, int most) {
    return new Blocks(loadN, deflectionMm, first, last, most);
  }

  int count() {
    return count;
  }

  int size() {
    return size;
  }

  int start(int block) {
    return first + block * size;
  }

  int end(int block) {
    return block == count - 1 ? last : first + (block + 1) * size;
  }

  /** Smoothed load of a block in N. */
  double loadN(int block) {
    return loadN[block];
  }

  /** Smoothed deflection of a block in mm. */
  double deflectionMm(int block) {
    return deflectionCourse()[block];
  }

  private double[] deflectionCourse() {
    if (deflectionMm == null) {
      deflectionMm = courseOf(deflections);
    }
    return deflectionMm;
  }

  /** The course of any quantity that has a value for each sample: medians, smoothed. */
  double[] courseOf(double[] values) {
    double[] medians = new double[count];
    if (size == 1) {
      System.arraycopy(values, first, medians, 0, count);
    } else {
      double[] scratch = new double[2 * size];
      for (int b = 0; b < count; b++) {
        int length = end(b) - start(b);
        System.arraycopy(values, start(b), scratch, 0, length);
        medians[b] = Medians.of(scratch, 0, length);
      }
    }
    double[] smooth = new double[count];
    Medians.running(medians, count, reach, smooth);
    return smooth;
  }

  /**
   * The greatest value that does not stand alone and does not stand out of the course: two of the
   * four samples around it come as near to it as {@code noise} and the movement of the course
   * nearby, the course comes as near as that too, and what is above all of the course is
   * believable.
   */
  private double greatestKept(
      double[] values, double[] course, double noise, IntPredicate believable) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double c : course) {
      low = Math.min(low, c);
      high = Math.max(high, c);
    }
    double greatest = Double.NEGATIVE_INFINITY;
    for (int b = 0; b < count; b++) {
      if (course[b] < high - WORTH_LOOKING * (high - low)) {
        continue;
      }
      double around = noise + movesNear(b, course);
      for (int i = start(b); i < end(b); i++) {
        if (values[i] > greatest
            && values[i] <= course[b] + around
            && (values[i] <= high + noise || believable.test(i))
            && hasCompany(values, i, around)) {
          greatest = values[i];
        }
      }
    }
    return greatest;
  }

  /** How far a sample may lie off the course of its block because the course itself moves, in N. */
  double loadMovesNear(int block) {
    return movesNear(block, loadN);
  }

  private double movesNear(int block, double[] course) {
    double step = 0;
    int to = Math.min(count - 1, block + reach + 2);
    for (int c = Math.max(1, block - reach - 2); c <= to; c++) {
      step = Math.max(step, Math.abs(course[c] - course[c - 1]));
    }
    return (reach + 1) * step;
  }

  private boolean hasCompany(double[] values, int i, double reach) {
    int near = 0;
    for (int j = Math.max(first, i - 2); j <= Math.min(last - 1, i + 2); j++) {
      near += j != i && values[j] >= values[i] - reach ? 1 : 0;
    }
    return near >= 2;
  }

  /** The greatest load kept in N; {@code believable} tells of a sample whether its gauge agrees. */
  double greatestLoadKept(double noiseN, IntPredicate believable) {
    return greatestKept(loads, loadN, noiseN, believable);
  }

  /** The greatest deflection kept in mm. */
  double greatestDeflectionKept(double noiseMm) {
    return greatestKept(deflections, deflectionCourse(), noiseMm, i -> true);
  }
}
