package sagwright.finish;

import java.util.Arrays;
import java.util.List;

/**
 * An interval of cuts in which no knot passes another: over it the spare at each knot is a straight
 * line in the cut, and the least spare is the least of these lines. Places in it are shares, 0 at
 * its first cut and 1 at its last. In plain arrays, for thousands of blanks are gone through.
 */
final class CutInterval {
  private final double fromCut;
  private final double toCut;
  private final double[] firstMm;
  private final double[] lastMm;
  private int lines;
  private double leastFirst = Double.MAX_VALUE;
  private double leastLast = Double.MAX_VALUE;

  /** No least spare of the interval is above this. */
  private double mostMm = Double.MAX_VALUE;

  CutInterval(double fromCut, double toCut, int mostLines) {
    this.fromCut = fromCut;
    this.toCut = toCut;
    firstMm = new double[mostLines];
    lastMm = new double[mostLines];
  }

  /** Adds a line by its spare at the first cut and at the last. */
  void add(double first, double last) {
    firstMm[lines] = first;
    lastMm[lines++] = last;
    leastFirst = Math.min(leastFirst, first);
    leastLast = Math.min(leastLast, last);
    mostMm = Math.min(mostMm, Math.max(first, last));
  }

  /** The greater one of the least spares at both ends. */
  double leastAtAnEnd() {
    return Math.max(leastFirst, leastLast);
  }

  private double cutAt(double share) {
    return share == 1 ? toCut : fromCut + share * (toCut - fromCut);
  }

  private double leastAt(double share) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < lines; i++) {
      double spare = share == 1 ? lastMm[i] : firstMm[i] + share * (lastMm[i] - firstMm[i]);
      least = Math.min(least, spare);
    }
    return least;
  }

  /** Where the round fits, as {from, to}; null where it does nowhere. */
  double[] fitting() {
    double from = 0;
    double to = 1;
    for (int i = 0; i < lines; i++) {
      double first = firstMm[i] - Cut.LEAST_SPARE_THAT_FITS_MM;
      double last = lastMm[i] - Cut.LEAST_SPARE_THAT_FITS_MM;
      if (first < 0 && last < 0) {
        return null;
      }
      if (first < 0) {
        from = Math.max(from, first / (first - last));
      } else if (last < 0) {
        to = Math.min(to, first / (first - last));
      }
    }
    return from <= to ? new double[] {cutAt(from), cutAt(to)} : null;
  }

  /**
   * Adds {cut, least spare} where the least spare can be greatest: at both ends and where two lines
   * cross that can be the least, in rising order of the cut.
   *
   * @param wantedMm nothing is added where no least spare of the interval can be as great
   */
  void addCandidates(double wantedMm, List<double[]> candidates) {
    if (mostMm < wantedMm) {
      return;
    }
    int[] low = linesThatReach(mostMm);
    double[] shares = new double[2 + low.length * (low.length - 1) / 2];
    shares[1] = 1;
    int count = 2;
    for (int i = 0; i < low.length; i++) {
      for (int j = 0; j < i; j++) {
        double apartFirst = firstMm[low[i]] - firstMm[low[j]];
        double apartLast = lastMm[low[i]] - lastMm[low[j]];
        if (apartFirst < 0 != apartLast < 0 && apartFirst != apartLast) {
          shares[count++] = apartFirst / (apartFirst - apartLast);
        }
      }
    }
    Arrays.sort(shares, 0, count);
    for (int i = 0; i < count; i++) {
      candidates.add(new double[] {cutAt(shares[i]), leastAt(shares[i])});
    }
  }

  /** The lines that can be the least: those that do not stay above the most that it can be. */
  private int[] linesThatReach(double most) {
    int[] low = new int[lines];
    int count = 0;
    for (int i = 0; i < lines; i++) {
      if (Math.min(firstMm[i], lastMm[i]) <= most) {
        low[count++] = i;
      }
    }
    return Arrays.copyOf(low, count);
  }
}
