package sagwright.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds the stretch of a loading branch to fit: the one with the most certain slope among those
 * that agree with their own parts ({@link Stretches}).
 *
 * <p>Taking the most certain one that passes is O. V. Lepski's rule (Theory of Probability and its
 * Applications 35 (1990) 454). A seating toe is cut off that way at the lower end. A branch that is
 * steeper farther down yields: there the lower stretch is taken. The widest stretch, 20 to 95 % of
 * the greatest load, is common practice, no source.
 */
final class StraightPartSearch {
  private static final double WIDEST_FROM = 0.20;
  private static final double WIDEST_TO = 0.95;
  private static final double LEAST_WIDTH = 0.25;
  private static final double STEP = 0.05;

  /** A difference of slope that a reader should hear of. */
  private static final double WORTH_SAYING = 0.01;

  /** Share of the slope's variance that the squared bias of a toe's tail may have unheeded. */
  private static final double FREE_OF_TOE = 0.1;

  /** Where a branch has a sharp corner no rate says how far it goes on. */
  private static final double MOST_CHANGE = 0.5;

  private static final double TOE_MAY_REACH = 0.5;
  private static final double LEAST_CORRELATION_SQUARED = 0.7;

  private final LoadingBranch branch;
  private final BranchSums sums;
  private Stretches stretches;

  StraightPartSearch(LoadingBranch branch, ReadingUncertainty uncertainty) {
    this.branch = branch;
    this.sums = branch.sums();
    this.stretches = Stretches.of(branch, uncertainty);
  }

  StraightPart find() throws PoorRunException {
    Stretch widest = stretches.between(WIDEST_FROM, WIDEST_TO);
    if (widest == null || sums.samples(widest.from(), widest.to()) == Stretches.LEAST_SAMPLES) {
      widest = stretches.between(WIDEST_FROM / 2, 1.01);
    }
    if (widest == null) {
      throw new PoorRunException(
          "too few samples: fewer than "
              + Stretches.LEAST_SAMPLES
              + " clean ones on the loading branch");
    }
    if (stretches.isStraight(widest)
        && widest.bias() * widest.bias() < FREE_OF_TOE * widest.variance()) {
      return StraightPart.straight(widest.from(), widest.to());
    }
    StraightPart besideSlip = besideSlip(widest);
    if (besideSlip != null) {
      return besideSlip;
    }
    stretches = stretches.heedingSlowScatterOn(widest);
    List<Stretch> all = clearOnes();
    List<Stretch> straight = all.stream().filter(stretches::isStraight).toList();
    if (straight.isEmpty()) {
      return surest(all.isEmpty() ? List.of(widest) : all);
    }
    Stretch best = upToTheTop(mostCertain(straight));
    Sides sides = sidesOf(best);
    if (sides.topBends || sides.stiffBelow || softens(widest)) {
      return surest(straight);
    }
    if (sides.softBelow && best.low() > TOE_MAY_REACH + STEP / 2) {
      double upward = bendAlongBranch() * (1 - best.middle());
      return StraightPart.bending(
          best.from(), best.to(), Math.max(stretches.halvesDiffer(best), upward));
    }
    return StraightPart.straight(best.from(), best.to());
  }

  /** The surer side of a slip, if there is one and a side of it is straight; else null. */
  private StraightPart besideSlip(Stretch widest) {
    Slip slip = Slip.on(branch, widest.from(), widest.to(), stretches.varianceN2());
    if (slip == null) {
      return null;
    }
    stretches = stretches.scatteringAtLeast(slip.varianceN2());
    return Stream.of(
            stretches.between(widest.low(), branch.progress(slip.block())),
            stretches.between(Math.nextUp(branch.progress(slip.block() + 1)), widest.high()))
        .filter(side -> side != null && stretches.isStraight(side))
        .min(Comparator.comparingDouble(Stretch::cost))
        .map(side -> new StraightPart(side.from(), side.to(), false, 0, slip))
        .orElse(null);
  }

  /**
   * A seating toe bends the lower end alone: what chance may have cut off at the top is taken back,
   * unless its slope is surely another.
   */
  private Stretch upToTheTop(Stretch best) {
    Stretch upward = stretches.between(best.low(), WIDEST_TO);
    double chance = Math.sqrt(Math.max(0, best.variance() - upward.variance()));
    return Math.abs(upward.slope() - best.slope()) <= Stretches.SURELY * chance ? upward : best;
  }

  /** What lies outside a straight stretch. */
  private record Sides(boolean topBends, boolean stiffBelow, boolean softBelow) {}

  private Sides sidesOf(Stretch best) {
    Stretch upward = stretches.between(best.low(), WIDEST_TO);
    Stretch downward = stretches.between(WIDEST_FROM, best.high());
    boolean topBends = !stretches.isStraight(upward) && matters(best, upward) != 0;
    int below = stretches.isStraight(downward) ? 0 : matters(best, downward);
    return new Sides(topBends, below > 0, below < 0);
  }

  /** Whether the slope falls all along the branch: a toe lets it rise. */
  private boolean softens(Stretch widest) {
    double falls = bendAlongBranch() * (widest.high() - widest.low());
    return sums.parabola(widest.from(), widest.to()).curvature() < 0
        && falls > WORTH_SAYING * widest.slope()
        && stretches.surelyCurves(widest);
  }

  /** The sign by which a wider stretch's slope differs, 0 where not worth saying or but chance. */
  private static int matters(Stretch stretch, Stretch wider) {
    double difference = wider.slope() - stretch.slope();
    double chance = Math.sqrt(Math.max(0, stretch.variance() - wider.variance()));
    double heard = Math.max(WORTH_SAYING / 2 * stretch.slope(), Stretches.SURELY * chance);
    return Math.abs(difference) < heard ? 0 : (int) Math.signum(difference);
  }

  /** All in which load and deflection clearly rise together. */
  private List<Stretch> clearOnes() {
    List<Stretch> all = new ArrayList<>();
    for (double low = WIDEST_FROM; low + LEAST_WIDTH < WIDEST_TO + STEP / 2; low += STEP / 2) {
      for (double high = WIDEST_TO; high - low > LEAST_WIDTH - STEP / 2; high -= STEP) {
        Stretch stretch = stretches.between(low, high);
        if (stretch != null
            && stretch.clarity() >= LEAST_CORRELATION_SQUARED
            && stretch.slope() > 0) {
          all.add(stretch);
        }
      }
    }
    return all;
  }

  private static Stretch mostCertain(List<Stretch> straight) {
    Stretch best = straight.get(0);
    for (Stretch s : straight) {
      best = s.cost() < best.cost() ? s : best;
    }
    return best;
  }

  /**
   * Where the branch bends: the stretch whose slope is most surely that near the rest, chance and
   * the bend's way from the rest to the stretch's middle both counted.
   */
  private StraightPart surest(List<Stretch> among) {
    Stretch first = among.get(0);
    StraightPart best = StraightPart.bending(first.from(), first.to(), MOST_CHANGE * first.slope());
    double least = Double.POSITIVE_INFINITY;
    double along = bendAlongBranch();
    for (Stretch s : among) {
      double change = bendPerLoad(s, along) * s.middle();
      double doubt = (s.variance() + change * change / 3) / (s.slope() * s.slope());
      if (doubt < least) {
        least = doubt;
        best = StraightPart.bending(s.from(), s.to(), Math.min(change, MOST_CHANGE * s.slope()));
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
    double fastest = Math.max(along, 2 * stretches.halvesDiffer(s) / (s.high() - s.low()));
    Stretch above = stretches.between(s.high(), WIDEST_TO);
    if (above != null) {
      fastest =
          Math.max(fastest, Math.abs(above.slope() - s.slope()) / (above.middle() - s.middle()));
    }
    Stretch below = stretches.between(WIDEST_FROM, s.low());
    if (below != null) {
      fastest =
          Math.max(fastest, Math.abs(below.slope() - s.slope()) / (s.middle() - below.middle()));
    }
    return fastest;
  }

  private double bendAlongBranch() {
    Stretch widest = stretches.between(WIDEST_FROM, WIDEST_TO);
    if (widest == null) {
      return 0;
    }
    double curvature = sums.parabola(widest.from(), widest.to()).curvature();
    return 2 * Math.abs(curvature) * branch.rangeN() / widest.slope();
  }
}
