package sagwright.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sagwright.beam.Taper;

/**
 * Lays the finished round inside a blank. Both outlines run straight between knots, so that the
 * least spare, as a function of the cut, is the least of a few straight lines between the cuts at
 * which a knot of the one passes a knot of the other: its greatest value lies at such a cut or
 * where two of those lines cross. Exact but for rounding.
 */
public final class CutFinder {
  /** Spares nearer to one another than this, in mm, are equal. */
  private static final double EQUAL_MM = 1e-11;

  /** What sticks out of the blank by less than this, in mm, does so by rounding alone. */
  private static final double ROUNDING_MM = 1e-9;

  private final Outline blank;
  private final Outline finished;

  public CutFinder(Taper blank, Taper finished) {
    this(blank, Outline.lesserOf(finished));
  }

  CutFinder(Taper blank, Outline finished) {
    this.blank = Outline.lesserOf(blank);
    this.finished = finished;
  }

  /** The round laid at a given place; where there is no blank its diameter counts as 0. */
  public Cut at(double fromMm) {
    double length = finished.lengthMm();
    boolean sticksOut = fromMm + length > blank.lengthMm() + ROUNDING_MM;
    double onBlank = sticksOut ? Math.max(0, blank.lengthMm() - fromMm) : length;
    double least = Double.MAX_VALUE;
    double at = 0;
    for (double x : knotsOnShaft(fromMm)) {
      double there = sticksOut && x >= onBlank ? 0 : blank.at(fromMm + x);
      double spare = there - finished.at(x);
      if (spare < least - EQUAL_MM) {
        at = x;
      }
      least = Math.min(least, spare);
    }
    return new Cut(fromMm, least, at, sticksOut ? fromMm + length - blank.lengthMm() : 0);
  }

  /** The knots of both outlines on the finished shaft, rising. */
  private double[] knotsOnShaft(double fromMm) {
    double[] own = finished.knots();
    double[] others = blank.knots();
    double[] places = Arrays.copyOf(own, own.length + others.length);
    int count = own.length;
    for (double there : others) {
      double x = there - fromMm;
      if (x >= 0 && x <= finished.lengthMm()) {
        places[count++] = x;
      }
    }
    Arrays.sort(places, 0, count);
    return Arrays.copyOf(places, count);
  }

  /**
   * Of all cuts that lie on the blank the one with the greatest least spare, of equal ones the
   * smallest; 0 where none lies on the blank.
   */
  public Cut best() {
    List<CutInterval> intervals = intervals();
    if (intervals.isEmpty()) {
      return at(0);
    }
    double best = -Double.MAX_VALUE;
    for (CutInterval interval : intervals) {
      best = Math.max(best, interval.leastAtAnEnd());
    }
    List<double[]> candidates = new ArrayList<>();
    for (CutInterval interval : intervals) {
      interval.addCandidates(best - EQUAL_MM, candidates);
    }
    for (double[] candidate : candidates) {
      best = Math.max(best, candidate[1]);
    }
    double cut = 0;
    for (double[] candidate : candidates) {
      if (candidate[1] >= best - EQUAL_MM) {
        cut = candidate[0];
        break;
      }
    }
    return at(cut);
  }

  /** The cuts with which the round fits, as stretches {from, to} in rising order. */
  List<double[]> fitting() {
    List<double[]> fitting = new ArrayList<>();
    for (CutInterval interval : intervals()) {
      double[] next = interval.fitting();
      if (next == null) {
        continue;
      }
      double[] before = fitting.isEmpty() ? null : fitting.get(fitting.size() - 1);
      if (before != null && next[0] - before[1] <= ROUNDING_MM) {
        before[1] = next[1];
      } else {
        fitting.add(next);
      }
    }
    return fitting;
  }

  /** The intervals of cuts in which no knot passes another. */
  private List<CutInterval> intervals() {
    double last = blank.lengthMm() - finished.lengthMm();
    List<CutInterval> intervals = new ArrayList<>();
    if (last < -ROUNDING_MM) {
      return intervals;
    }
    double[] cuts = cutsWhereKnotsPass(Math.max(0, last));
    for (int i = 0; i + 1 < cuts.length || i == 0; i++) {
      intervals.add(interval(cuts[i], cuts[Math.min(i + 1, cuts.length - 1)]));
    }
    return intervals;
  }

  private double[] cutsWhereKnotsPass(double last) {
    double[] cuts = new double[blank.knots().length * finished.knots().length + 2];
    cuts[1] = last;
    int count = 2;
    for (double there : blank.knots()) {
      for (double x : finished.knots()) {
        if (there - x > 0 && there - x < last) {
          cuts[count++] = there - x;
        }
      }
    }
    Arrays.sort(cuts, 0, count);
    int unlike = 1;
    for (int i = 1; i < count; i++) {
      if (cuts[i] != cuts[unlike - 1]) {
        cuts[unlike++] = cuts[i];
      }
    }
    return Arrays.copyOf(cuts, unlike);
  }

  private CutInterval interval(double from, double to) {
    double[] own = finished.knots();
    double[] others = blank.knots();
    CutInterval interval = new CutInterval(from, to, own.length + others.length);
    for (int i = 0; i < own.length; i++) {
      double d = finished.atKnot(i);
      interval.add(blank.at(from + own[i]) - d, blank.at(to + own[i]) - d);
    }
    double middle = (from + to) / 2;
    for (int i = 0; i < others.length; i++) {
      double there = others[i];
      if (there >= middle && there <= middle + finished.lengthMm()) {
        double d = blank.atKnot(i);
        interval.add(d - finished.at(there - from), d - finished.at(there - to));
      }
    }
    return interval;
  }
}
