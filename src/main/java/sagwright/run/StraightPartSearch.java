package sagwright.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds the stretch of a loading branch to fit: the one with the most certain slope among those
 * that agree with their own parts.
 *
 * <p>A stretch is straight when its slope and those of its parts (without its lowest or highest
 * eighth, quarter, half) differ by no more than chance lets two estimates differ of which one uses
 * a part of the other's samples, var(part) − var(whole) (J. A. Hausman, Econometrica 46 (1978)
 * 1251). Taking the most certain one that passes is O. V. Lepski's rule (Theory of Probability and
 * its Applications 35 (1990) 454). A seating toe is cut off that way at the lower end. A branch
 * that is steeper farther down yields: there the lower stretch is taken. The widest stretch, 20 to
 * 95 % of the greatest load, is common practice, no source.
 */
final class StraightPartSearch {
  private static final double WIDEST_FROM = 0.20;
  private static final double WIDEST_TO = 0.95;
  private static final double LEAST_WIDTH = 0.25;
  private static final double STEP = 0.05;
  private static final int LEAST_SAMPLES = 4;
  private static final double[] PARTS = {0.125, 0.25, 0.5};

  /** Standard deviations that chance may hold between a stretch and its parts. */
  private static final double CHANCE = 2.3;

  /** Standard deviations that chance hardly ever holds. */
  private static final double SURELY = 3.5;

  /** Differences of slope below this share matter to nobody. */
  private static final double IMMATERIAL = 0.0007;

  /** A difference of slope that a reader should hear of. */
  private static final double WORTH_SAYING = 0.01;

  /** Share of the slope's variance that the squared bias of a toe's tail may have unheeded. */
  private static final double FREE_OF_TOE = 0.1;

  /** Where a branch has a sharp corner no rate says how far it goes on. */
  private static final double MOST_CHANGE = 0.5;

  private static final double TOE_MAY_REACH = 0.5;
  private static final double TOP_MAY_BEND_FROM = 0.85;
  private static final double LEAST_CORRELATION_SQUARED = 0.7;

  private final LoadingBranch branch;
  private final BranchSums sums;
  private final ReadingUncertainty uncertainty;
  private final double statedN2;
  private double varianceN2;
  private double slowInflation = 1;
  private ToeTail toe;

  /** A stretch with its slope (N/mm), the slope's variance, and where it lies in the load. */
  private record Stretch(
      int from,
      int to,
      double low,
      double high,
      double slope,
      double variance,
      double bias,
      double clarity) {
    /** What the slope may be off, squared: by chance and by the tail of the toe. */
    double cost() {
      return variance + bias * bias;
    }

    double middle() {
      return (low + high) / 2;
    }
  }

  StraightPartSearch(LoadingBranch branch, ReadingUncertainty uncertainty) {
    this.branch = branch;
    sums = branch.sums();
    this.uncertainty = uncertainty;
    double stated = Math.hypot(uncertainty.loadN(), branch.roughSlope() * uncertainty.gaugeMm());
    statedN2 = stated * stated;
    varianceN2 = Math.max(branch.varianceN2(), statedN2);
    toe = new ToeTail(branch, varianceN2);
  }

  StraightPart find() throws PoorRunException {
    Stretch widest = stretch(WIDEST_FROM, WIDEST_TO);
    if (widest == null || sums.samples(widest.from, widest.to) == LEAST_SAMPLES) {
      widest = stretch(WIDEST_FROM / 2, 1.01);
    }
    if (widest == null) {
      throw new PoorRunException(
          "too few samples: fewer than " + LEAST_SAMPLES + " clean ones on the loading branch");
    }
    if (isStraight(widest) && widest.bias * widest.bias < FREE_OF_TOE * widest.variance) {
      return StraightPart.straight(widest.from, widest.to);
    }
    StraightPart besideSlip = besideSlip(widest);
    if (besideSlip != null) {
      return besideSlip;
    }
    heedSlowScatter(widest);
    List<Stretch> all = stretches();
    List<Stretch> straight = all.stream().filter(this::isStraight).toList();
    if (straight.isEmpty()) {
      return surest(all.isEmpty() ? List.of(widest) : all);
    }
    Stretch best = upToTheTop(mostCertain(straight));
    Sides sides = sidesOf(best);
    if (sides.topBends || sides.stiffBelow || softens(widest)) {
      return surest(straight);
    }
    if (sides.softBelow && best.low > TOE_MAY_REACH + STEP / 2) {
      double upward = bendAlongBranch() * (1 - best.middle());
      return StraightPart.bending(best.from, best.to, Math.max(halvesDiffer(best), upward));
    }
    return StraightPart.straight(best.from, best.to);
  }

  /** The surer side of a slip, if there is one and a side of it is straight; else null. */
  private StraightPart besideSlip(Stretch widest) {
    Slip slip = Slip.on(branch, widest.from, widest.to, varianceN2);
    if (slip == null) {
      return null;
    }
    varianceN2 = Math.max(varianceN2, slip.varianceN2());
    return Stream.of(
            stretch(widest.low, branch.progress(slip.block())),
            stretch(Math.nextUp(branch.progress(slip.block() + 1)), widest.high))
        .filter(side -> side != null && isStraight(side))
        .min(Comparator.comparingDouble(Stretch::cost))
        .map(side -> new StraightPart(side.from, side.to, false, 0, slip))
        .orElse(null);
  }

  /**
   * A seating toe bends the lower end alone: what chance may have cut off at the top is taken back,
   * unless its slope is surely another.
   */
  private Stretch upToTheTop(Stretch best) {
    Stretch upward = stretch(best.low, WIDEST_TO);
    double chance = Math.sqrt(Math.max(0, best.variance - upward.variance));
    return Math.abs(upward.slope - best.slope) <= SURELY * chance ? upward : best;
  }

  /** Lets every judgement from here on count with scatter that does not average out. */
  private void heedSlowScatter(Stretch widest) {
    SlowScatter slow =
        new SlowScatter(branch, widest.from, widest.to, widest.slope, branch::counts);
    slowInflation = slow.inflation(varianceN2);
    if (slowInflation > 1) {
      varianceN2 *= slowInflation;
      toe = new ToeTail(branch, varianceN2);
    }
  }

  /** What lies outside a straight stretch. */
  private record Sides(boolean topBends, boolean stiffBelow, boolean softBelow) {}

  private Sides sidesOf(Stretch best) {
    Stretch upward = stretch(best.low, WIDEST_TO);
    Stretch downward = stretch(WIDEST_FROM, best.high);
    boolean topBends = !isStraight(upward) && matters(best, upward) != 0;
    int below = isStraight(downward) ? 0 : matters(best, downward);
    return new Sides(topBends, below > 0, below < 0);
  }

  /** Whether the slope falls all along the branch: a toe lets it rise. */
  private boolean softens(Stretch widest) {
    double falls = bendAlongBranch() * (widest.high - widest.low);
    return sums.parabola(widest.from, widest.to).curvature() < 0
        && falls > WORTH_SAYING * widest.slope
        && curves(widest, SURELY);
  }

  /** The sign by which a wider stretch's slope differs, 0 where not worth saying or but chance. */
  private static int matters(Stretch stretch, Stretch wider) {
    double difference = wider.slope - stretch.slope;
    double chance = Math.sqrt(Math.max(0, stretch.variance - wider.variance));
    double heard = Math.max(WORTH_SAYING / 2 * stretch.slope, SURELY * chance);
    return Math.abs(difference) < heard ? 0 : (int) Math.signum(difference);
  }

  private List<Stretch> stretches() {
    List<Stretch> all = new ArrayList<>();
    for (double low = WIDEST_FROM; low + LEAST_WIDTH < WIDEST_TO + STEP / 2; low += STEP / 2) {
      for (double high = WIDEST_TO; high - low > LEAST_WIDTH - STEP / 2; high -= STEP) {
        Stretch stretch = stretch(low, high);
        if (stretch != null && stretch.clarity >= LEAST_CORRELATION_SQUARED && stretch.slope > 0) {
          all.add(stretch);
        }
      }
    }
    return all;
  }

  private static Stretch mostCertain(List<Stretch> stretches) {
    Stretch best = stretches.get(0);
    for (Stretch s : stretches) {
      best = s.cost() < best.cost() ? s : best;
    }
    return best;
  }

  /**
   * Where the branch bends: the stretch whose slope is most surely that near the rest, chance and
   * the bend's way from the rest to the stretch's middle both counted.
   */
  private StraightPart surest(List<Stretch> stretches) {
    Stretch first = stretches.get(0);
    StraightPart best = StraightPart.bending(first.from, first.to, MOST_CHANGE * first.slope);
    double least = Double.POSITIVE_INFINITY;
    double along = bendAlongBranch();
    for (Stretch s : stretches) {
      double change = bendPerLoad(s, along) * s.middle();
      double doubt = (s.variance + change * change / 3) / (s.slope * s.slope);
      if (doubt < least) {
        least = doubt;
        best = StraightPart.bending(s.from, s.to, Math.min(change, MOST_CHANGE * s.slope));
      }
    }
    return best;
  }

  /**
   * How fast the slope changes about a stretch, in N/mm per greatest load: along the whole branch,
   * between the stretch's halves, or between it and what lies above or below, whichever is the
   * most.
   */
  private double bendPerLoad(Stretch s, double along) {
    double fastest = Math.max(along, 2 * halvesDiffer(s) / (s.high - s.low));
    Stretch above = stretch(s.high, WIDEST_TO);
    if (above != null) {
      fastest = Math.max(fastest, Math.abs(above.slope - s.slope) / (above.middle() - s.middle()));
    }
    Stretch below = stretch(WIDEST_FROM, s.low);
    if (below != null) {
      fastest = Math.max(fastest, Math.abs(below.slope - s.slope) / (s.middle() - below.middle()));
    }
    return fastest;
  }

  private double bendAlongBranch() {
    Stretch widest = stretch(WIDEST_FROM, WIDEST_TO);
    if (widest == null) {
      return 0;
    }
    double curvature = sums.parabola(widest.from, widest.to).curvature();
    return 2 * Math.abs(curvature) * branch.rangeN() / widest.slope;
  }

  /** By how much the slopes of a stretch's halves differ, in N/mm. */
  private double halvesDiffer(Stretch s) {
    int middle = split(s.from, s.to, 0.5);
    if (sums.samples(s.from, middle) < 2 || sums.samples(middle, s.to) < 2) {
      return 0;
    }
    return Math.abs(slope(sums.line(middle, s.to)) - slope(sums.line(s.from, middle)));
  }

  private boolean isStraight(Stretch whole) {
    for (double share : PARTS) {
      if (!agrees(whole, split(whole.from, whole.to, share), whole.to)
          || !agrees(whole, whole.from, split(whole.from, whole.to, 1 - share))) {
        return false;
      }
    }
    return !curves(whole, CHANCE);
  }

  /** Whether a parabola through a stretch is better than the line by more than its own noise. */
  private boolean curves(Stretch whole, double deviations) {
    int free = sums.samples(whole.from, whole.to) - 3;
    if (free < 2) {
      return false;
    }
    BranchSums.Parabola parabola = sums.parabola(whole.from, whole.to);
    double width = (whole.high - whole.low) * branch.rangeN() / whole.slope;
    double variance = slowInflation * Math.max(parabola.squares() / free, statedN2);
    double bound = studentBound(deviations, free);
    return Math.abs(parabola.curvature()) * width / 2 > IMMATERIAL * whole.slope
        && parabola.gain() > bound * bound * variance;
  }

  /**
   * The point of Student's t that so many standard deviations are of the normal: Cornish and
   * Fisher's expansion (Abramowitz and Stegun, 26.7.5), good to 10 % from 3 degrees of freedom.
   */
  private static double studentBound(double z, int free) {
    double z3 = z * z * z;
    return z + (z3 + z) / (4.0 * free) + (5 * z3 * z * z + 16 * z3 + 3 * z) / (96.0 * free * free);
  }

  private boolean agrees(Stretch whole, int from, int to) {
    int samples = sums.samples(from, to);
    if (samples < 3 || samples == sums.samples(whole.from, whole.to)) {
      return true;
    }
    LineSums part = sums.line(from, to);
    double off = slope(part) - whole.slope;
    double chance = Math.sqrt(Math.max(0, varianceN2 / part.sxx() - whole.variance));
    return Math.abs(off) <= IMMATERIAL * whole.slope || Math.abs(off) <= CHANCE * chance;
  }

  /** The block at which a stretch has come this share of its own way. */
  private int split(int from, int to, double share) {
    double a = branch.progress(from);
    double b = branch.progress(to - 1);
    return Math.max(from, Math.min(to, branch.blockAt(a + share * (b - a))));
  }

  /** The stretch between two shares of the greatest load; null with too few samples in it. */
  private Stretch stretch(double low, double high) {
    int from = branch.blockAt(low);
    int to = branch.blockAt(high);
    if (sums.samples(from, to) < LEAST_SAMPLES) {
      return null;
    }
    LineSums line = sums.line(from, to);
    return new Stretch(
        from,
        to,
        low,
        Math.min(high, 1),
        slope(line),
        varianceN2 / line.sxx(),
        toe.lowersSlope(from, to, branch.rangeN()),
        line.correlationSquared());
  }

  private double slope(LineSums line) {
    return YorkLine.ofEqualErrors(line, uncertainty.gaugeMm(), uncertainty.loadN()).slope();
  }
}
