package sagwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import sagwright.check.CalibrationPoint.Direction;

/**
 * The points of a calibration while they are taken, up and down, round by round. Immutable.
 *
 * @param taken in the order in which they were taken; what was applied stands there as it was
 *     typed, masses in g and blocks in mm
 */
public record GuidedPoints(List<CalibrationPoint> taken) {
  public static final GuidedPoints NONE = new GuidedPoints(List.of());

  public GuidedPoints {
    taken = List.copyOf(taken);
  }

  /** What is to be done next. */
  public enum Step {
    FIRST_ZERO,
    GO_UP,
    GO_ON_OR_TURN,
    GO_DOWN,
    ROUND_DONE
  }

  /**
   * The next point: rising where more is applied than before, falling where less. Nothing applied
   * twice in a row is the end of one round and the beginning of the next.
   *
   * @param known mass in g or block in mm, 0 or above
   */
  public GuidedPoints plus(double known, double reading) {
    List<CalibrationPoint> more = new ArrayList<>(taken);
    more.add(new CalibrationPoint(known, reading, directionOf(known)));
    return new GuidedPoints(more);
  }

  private Direction directionOf(double known) {
    if (taken.isEmpty() || known > last().applied()) {
      return Direction.UP;
    }
    if (known < last().applied()) {
      return Direction.DOWN;
    }
    return known == 0 ? Direction.UP : last().direction();
  }

  /** Without the newest point; the same where there is none. */
  public GuidedPoints withoutLast() {
    return taken.isEmpty() ? this : new GuidedPoints(taken.subList(0, taken.size() - 1));
  }

  public Step step() {
    if (taken.isEmpty()) {
      return Step.FIRST_ZERO;
    }
    boolean rising = last().direction() == Direction.UP;
    if (last().applied() == 0) {
      return rising ? Step.GO_UP : Step.ROUND_DONE;
    }
    return rising ? Step.GO_ON_OR_TURN : Step.GO_DOWN;
  }

  /**
   * What is likely to be applied next, as the first round went: nothing at the beginning and after
   * each round, the next below on the way down, the next above on the way up of later rounds. Empty
   * while the first round still climbs.
   */
  public OptionalDouble proposal() {
    DoubleStream known = taken.stream().mapToDouble(CalibrationPoint::applied);
    return switch (step()) {
      case FIRST_ZERO, ROUND_DONE -> OptionalDouble.of(0);
      case GO_DOWN -> known.filter(k -> k < last().applied()).max();
      case GO_UP, GO_ON_OR_TURN -> roundsDone() == 0 ? OptionalDouble.empty() : nextOfARound();
    };
  }

  private OptionalDouble nextOfARound() {
    double now = last().applied();
    OptionalDouble above =
        taken.stream().mapToDouble(CalibrationPoint::applied).filter(k -> k > now).min();
    return above.isPresent()
        ? above
        : taken.stream().mapToDouble(CalibrationPoint::applied).filter(k -> k < now).max();
  }

  /** How many rounds have come back to nothing applied. */
  public int roundsDone() {
    return (int)
        taken.stream().filter(p -> p.applied() == 0 && p.direction() == Direction.DOWN).count();
  }

  /**
   * The points as a line is laid through them.
   *
   * @param applied from what was typed to N or mm
   */
  public List<CalibrationPoint> points(DoubleUnaryOperator applied) {
    return taken.stream()
        .map(
            p ->
                new CalibrationPoint(
                    applied.applyAsDouble(p.applied()), p.reading(), p.direction()))
        .toList();
  }

  private CalibrationPoint last() {
    return taken.get(taken.size() - 1);
  }
}
