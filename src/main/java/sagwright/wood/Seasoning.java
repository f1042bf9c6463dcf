package sagwright.wood;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a blank has seasoned since it was turned last: whether its mass still changes, as its
 * weighings show it.
 *
 * <p>The rule: two weighings at least {@link #LEAST_BETWEEN} apart are held against each other, the
 * newest and the one before it. A blank is settled where it loses or gains no more than {@link
 * #SETTLED_PERCENT_A_WEEK} of its mass a week: ours, in the manner of the constant mass of drying
 * standards (EN 13183-1 stops where two weighings differ by less than 0.1 %; from memory). With a
 * third weighing the loss is taken to fall off exponentially, as that of wood that comes to the
 * room's moisture does (common practice), and tells how many days more it takes.
 *
 * @param sinceTurned from the last turning to now; where it was never turned, from when it came
 * @param wasTurned whether it was turned since it came
 * @param state what the weighings show
 * @param lossGPerWeek below 0 for a gain; NaN where not known
 * @param daysMore until it is settled; NaN where not known, 0 where settled
 */
public record Seasoning(
    Duration sinceTurned, boolean wasTurned, State state, double lossGPerWeek, double daysMore) {
  /** Weighings nearer to each other tell more of the scales than of the wood. Ours, no source. */
  public static final Duration LEAST_BETWEEN = Duration.ofDays(6);

  public static final double SETTLED_PERCENT_A_WEEK = 0.1;

  private static final double DAYS_A_WEEK = 7;
  private static final double MS_A_DAY = Duration.ofDays(1).toMillis();

  /** What the weighings show. */
  public enum State {
    /** Not weighed since the last turning, or once, or twice too soon after another. */
    UNKNOWN,
    DRYING,
    SETTLED,
    GAINING
  }

  /** The mass of a blank at one time, in g. */
  public record Weighing(Instant at, double massG) {}

  /** When a blank's wood was last taken off. */
  public record LastTurning(Instant at, boolean wasTurned) {}

  /**
   * @param weighings those since the last turning, oldest first
   */
  public static Seasoning of(LastTurning turning, List<Weighing> weighings, Instant now) {
    Duration since = Duration.between(turning.at(), now);
    int newest = weighings.size() - 1;
    int before = newest < 0 ? -1 : lastBefore(weighings, newest);
    if (before < 0) {
      return new Seasoning(since, turning.wasTurned(), State.UNKNOWN, Double.NaN, Double.NaN);
    }
    double limit = SETTLED_PERCENT_A_WEEK / 100 * weighings.get(newest).massG();
    double loss = lossGPerWeek(weighings.get(before), weighings.get(newest));
    if (Math.abs(loss) <= limit) {
      return new Seasoning(since, turning.wasTurned(), State.SETTLED, loss, 0);
    }
    if (loss < 0) {
      return new Seasoning(since, turning.wasTurned(), State.GAINING, loss, Double.NaN);
    }
    int first = lastBefore(weighings, before);
    OptionalDouble days =
        first < 0
            ? OptionalDouble.empty()
            : daysTo(
                limit,
                List.of(weighings.get(first), weighings.get(before), weighings.get(newest)),
                now);
    return new Seasoning(
        since,
        turning.wasTurned(),
        State.DRYING,
        loss,
        days.isPresent() ? days.getAsDouble() : Double.NaN);
  }

  /** The newest weighing that lies far enough before one; −1 for none. */
  private static int lastBefore(List<Weighing> weighings, int at) {
    Instant latest = weighings.get(at).at().minus(LEAST_BETWEEN);
    for (int i = at - 1; i >= 0; i--) {
      if (!weighings.get(i).at().isAfter(latest)) {
        return i;
      }
    }
    return -1;
  }

  private static double lossGPerWeek(Weighing from, Weighing to) {
    return (from.massG() - to.massG()) / days(from.at(), to.at()) * DAYS_A_WEEK;
  }

  private static double days(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / MS_A_DAY;
  }

  /** Empty where the loss does not fall off. */
  private static OptionalDouble daysTo(double limit, List<Weighing> three, Instant now) {
    double earlier = lossGPerWeek(three.get(0), three.get(1));
    double later = lossGPerWeek(three.get(1), three.get(2));
    double betweenMiddles = days(three.get(0).at(), three.get(2).at()) / 2;
    if (!(earlier > later)) {
      return OptionalDouble.empty();
    }
    double decayDays = betweenMiddles / Math.log(earlier / later);
    double fromMiddle = decayDays * Math.log(later / limit);
    double middleToNow =
        days(three.get(1).at(), three.get(2).at()) / 2 + days(three.get(2).at(), now);
    return OptionalDouble.of(Math.max(1, fromMiddle - middleToNow));
  }
}
