package sagwright.run;

/** Medians and other quantiles of arrays, by selection in place: O(n), no allocation. */
final class Medians {
  private static final int SMALL = 24;

  private Medians() {}

  /** The median of {@code a[from … to)}; the slice is reordered. */
  static double of(double[] a, int from, int to) {
    int n = to - from;
    if (n == 3) {
      return middleOfThree(a[from], a[from + 1], a[from + 2]);
    }
    double upper = quantile(a, from, to, n / 2);
    if ((n & 1) == 1) {
      return upper;
    }
    double lower = Double.NEGATIVE_INFINITY;
    for (int i = from; i < from + n / 2; i++) {
      lower = Math.max(lower, a[i]);
    }
    return (lower + upper) / 2;
  }

  /** The {@code rank}-th smallest (from 0) of {@code a[from … to)}; the slice is reordered. */
  static double quantile(double[] a, int from, int to, int rank) {
    int low = from;
    int high = to - 1;
    int k = from + rank;
    while (high - low > SMALL) {
      double pivot = middleOfThree(a[low], a[(low + high) >>> 1], a[high]);
      int i = low;
      int j = high;
      while (i <= j) {
        while (a[i] < pivot) {
          i++;
        }
        while (a[j] > pivot) {
          j--;
        }
        if (i <= j) {
          double swap = a[i];
          a[i++] = a[j];
          a[j--] = swap;
        }
      }
      if (k <= j) {
        high = j;
      } else if (k >= i) {
        low = i;
      } else {
        return a[k];
      }
    }
    sort(a, low, high + 1);
    return a[k];
  }

  /**
   * Running median of {@code in[0 … n)} over 2·reach + 1 values, fewer (but as many on either side)
   * near the ends, into {@code out}. A rising or falling stretch passes unchanged. The two ends
   * follow Tukey's rule (Exploratory Data Analysis, 1977, chapter 7): the median of the end itself,
   * of its smoothed neighbour, and of where the next two point.
   */
  static void running(double[] in, int n, int reach, double[] out) {
    double[] window = new double[2 * reach + 1];
    for (int i = 0; i < n; i++) {
      int h = Math.min(reach, Math.min(i, n - 1 - i));
      if (h == 2) {
        out[i] = middleOfFive(in[i - 2], in[i - 1], in[i], in[i + 1], in[i + 2]);
      } else if (h == 1) {
        out[i] = middleOfThree(in[i - 1], in[i], in[i + 1]);
      } else {
        int width = 2 * h + 1;
        System.arraycopy(in, i - h, window, 0, width);
        sort(window, 0, width);
        out[i] = window[h];
      }
    }
    if (n >= 3) {
      out[0] = middleOfThree(in[0], out[1], 3 * out[1] - 2 * out[2]);
      out[n - 1] = middleOfThree(in[n - 1], out[n - 2], 3 * out[n - 2] - 2 * out[n - 3]);
    }
  }

  private static double middleOfFive(double a, double b, double c, double d, double e) {
    double lower = Math.max(Math.min(a, b), Math.min(c, d));
    double upper = Math.min(Math.max(a, b), Math.max(c, d));
    return middleOfThree(e, lower, upper);
  }

  private static double middleOfThree(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }

  private static void sort(double[] a, int from, int to) {
    for (int i = from + 1; i < to; i++) {
      double value = a[i];
      int j = i - 1;
      while (j >= from && a[j] > value) {
        a[j + 1] = a[j];
        j--;
      }
      a[j + 1] = value;
    }
  }
}
