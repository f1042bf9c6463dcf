package sagwright.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
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
    this.blank = Outline.lesserOf(blank);
    this.finished = Outline.lesserOf(finished);
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
    return new Cut(fromMm, least, at);
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
    List<Line[]> intervals = intervals();
    double best = at(0).leastSpareMm();
    for (Line[] lines : intervals) {
      best = Math.max(best, Math.max(leastAt(lines, 0), leastAt(lines, 1)));
    }
    List<double[]> candidates = new ArrayList<>();
    for (Line[] lines : intervals) {
      double most = mostOfLeast(lines);
      if (most >= best - EQUAL_MM) {
        addCandidates(thatReach(lines, most), candidates);
      }
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
    for (Line[] lines : intervals()) {
      double from = 0;
      double to = 1;
      for (Line line : lines) {
        double first = line.first - Cut.LEAST_SPARE_THAT_FITS_MM;
        double last = line.last - Cut.LEAST_SPARE_THAT_FITS_MM;
        if (first < 0 && last < 0) {
          to = -1;
        } else if (first < 0) {
          from = Math.max(from, first / (first - last));
        } else if (last < 0) {
          to = Math.min(to, first / (first - last));
        }
      }
      if (from <= to) {
        double[] next = {lines[0].cutAt(from), lines[0].cutAt(to)};
        double[] before = fitting.isEmpty() ? null : fitting.get(fitting.size() - 1);
        if (before != null && next[0] - before[1] <= ROUNDING_MM) {
          before[1] = next[1];
        } else {
          fitting.add(next);
        }
      }
    }
    return fitting;
  }

  /** One straight line of spare over an interval of cuts. */
  private record Line(double fromCut, double toCut, double first, double last) {
    double cutAt(double share) {
      return share == 1 ? toCut : fromCut + share * (toCut - fromCut);
    }

    double at(double share) {
      return share == 1 ? last : first + share * (last - first);
    }
  }

  /** The intervals of cuts in which nothing passes anything, each with its lines of spare. */
  private List<Line[]> intervals() {
    double last = blank.lengthMm() - finished.lengthMm();
    List<Line[]> intervals = new ArrayList<>();
    if (last < -ROUNDING_MM) {
      return intervals;
    }
    double[] cuts = cutsWhereKnotsPass(Math.max(0, last));
    for (int i = 0; i + 1 < cuts.length || i == 0; i++) {
      intervals.add(linesBetween(cuts[i], cuts[Math.min(i + 1, cuts.length - 1)]));
    }
    return intervals;
  }

  private double[] cutsWhereKnotsPass(double last) {
    DoubleStream.Builder cuts = DoubleStream.builder().add(0).add(last);
    for (double there : blank.knots()) {
      for (double x : finished.knots()) {
        if (there - x > 0 && there - x < last) {
          cuts.add(there - x);
        }
      }
    }
    return cuts.build().sorted().distinct().toArray();
  }

  private Line[] linesBetween(double from, double to) {
    List<Line> lines = new ArrayList<>();
    for (double x : finished.knots()) {
      double d = finished.at(x);
      lines.add(new Line(from, to, blank.at(from + x) - d, blank.at(to + x) - d));
    }
    double middle = (from + to) / 2;
    for (double there : blank.knots()) {
      if (there >= middle && there <= middle + finished.lengthMm()) {
        double d = blank.at(there);
        lines.add(new Line(from, to, d - finished.at(there - from), d - finished.at(there - to)));
      }
    }
    return lines.toArray(Line[]::new);
  }

  private static double leastAt(Line[] lines, double share) {
    double least = Double.MAX_VALUE;
    for (Line line : lines) {
      least = Math.min(least, line.at(share));
    }
    return least;
  }

  /** No least spare of the interval is above this. */
  private static double mostOfLeast(Line[] lines) {
    double most = Double.MAX_VALUE;
    for (Line line : lines) {
      most = Math.min(most, Math.max(line.first, line.last));
    }
    return most;
  }

  /** The lines that can be the least: those that do not stay above the most that it can be. */
  private static Line[] thatReach(Line[] lines, double most) {
    List<Line> low = new ArrayList<>();
    for (Line line : lines) {
      if (Math.min(line.first, line.last) <= most) {
        low.add(line);
      }
    }
    return low.toArray(Line[]::new);
  }

  /** Adds {cut, least spare} at both ends and where two lines cross, in rising order of the cut. */
  private static void addCandidates(Line[] lines, List<double[]> candidates) {
    DoubleStream.Builder shares = DoubleStream.builder().add(0).add(1);
    for (int i = 0; i < lines.length; i++) {
      for (int j = 0; j < i; j++) {
        double apartFirst = lines[i].first - lines[j].first;
        double apartLast = lines[i].last - lines[j].last;
        if (apartFirst < 0 != apartLast < 0 && apartFirst != apartLast) {
          shares.add(apartFirst / (apartFirst - apartLast));
        }
      }
    }
    for (double share : shares.build().sorted().toArray()) {
      candidates.add(new double[] {lines[0].cutAt(share), leastAt(lines, share)});
    }
  }
}
