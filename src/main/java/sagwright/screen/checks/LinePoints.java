package sagwright.screen.checks;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.HeadSession;
import sagwright.bench.LinkState;
import sagwright.bench.SettledCounts;
import sagwright.check.CalibrationPoint;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.check.PoorPointsException;
import sagwright.job.CalibrationDrafts;
import sagwright.job.CalibrationDrafts.Kind;
import sagwright.workshop.WorkshopException;

/**
 * The points of load and gauge while they are taken, each kept as a draft at once. For the work
 * thread.
 */
final class LinePoints {
  private final CalibrationDrafts drafts;
  private final HeadSession session;
  private final Map<Kind, GuidedPoints> points = new EnumMap<>(Kind.class);
  private final Map<Kind, Deque<GuidedPoints>> before = new EnumMap<>(Kind.class);
  private Optional<LocalGravity> gravity = Optional.empty();

  LinePoints(CalibrationDrafts drafts, HeadSession session) {
    this.drafts = drafts;
    this.session = session;
    for (Kind kind : Kind.values()) {
      points.put(kind, GuidedPoints.NONE);
      before.put(kind, new ArrayDeque<>());
    }
  }

  /** Goes on where somebody has left off. */
  void readDrafts() throws WorkshopException {
    gravity = drafts.gravity();
    for (Kind kind : Kind.values()) {
      points.put(kind, drafts.points(kind));
    }
  }

  /** Of the bench's place; empty where nobody has said where that is. */
  Optional<LocalGravity> gravity() {
    return gravity;
  }

  LocalGravity gravityOrStandard() {
    return gravity.orElse(LocalGravity.STANDARD_CGPM_1901);
  }

  void setGravity(LocalGravity here) throws WorkshopException {
    drafts.gravity(here);
    gravity = Optional.of(here);
  }

  /** What is applied: from g or mm as typed to N or mm. */
  double applied(Kind kind, double known) {
    return applied(kind).applyAsDouble(known);
  }

  private DoubleUnaryOperator applied(Kind kind) {
    return kind == Kind.LOAD ? gravityOrStandard()::loadN : mm -> mm;
  }

  GuidedPoints taken(Kind kind) {
    return points.get(kind);
  }

  LineCalibration line(Kind kind) throws PoorPointsException {
    return LineCalibration.of(points.get(kind).points(applied(kind)));
  }

  ChecksView.Line view(Kind kind) {
    GuidedPoints taken = points.get(kind);
    List<CalibrationPoint> applied = taken.points(applied(kind));
    try {
      return new ChecksView.Line(taken, applied, LineCalibration.of(applied));
    } catch (PoorPointsException e) {
      return new ChecksView.Line(taken, applied, null);
    }
  }

  /**
   * Takes the next point.
   *
   * @param known mass in g or block in mm
   * @param reading null for what the head shows
   */
  void take(Kind kind, double known, Double reading) throws WorkshopException {
    if (known < 0) {
      throw new WorkshopException("what is applied lies at 0 or above");
    }
    double taken = reading == null ? fromHead(kind) : reading;
    change(kind, points.get(kind).plus(known, taken));
  }

  private double fromHead(Kind kind) throws WorkshopException {
    SettledCounts counts = session.settled();
    SettledCounts.Channel channel = kind == Kind.LOAD ? counts.load() : counts.gauge();
    BenchSnapshot snapshot = session.snapshot();
    if (snapshot.link() != LinkState.READING || channel.readings() == 0) {
      throw new WorkshopException(
          "no readings come: type what it shows.  " + snapshot.linkInWords());
    }
    if (!channel.isStill()) {
      throw new WorkshopException("It still moves: wait until it stands, then once more.");
    }
    return channel.mean();
  }

  private void change(Kind kind, GuidedPoints next) throws WorkshopException {
    drafts.leave(kind, next);
    before.get(kind).push(points.put(kind, next));
  }

  /** Undoes the newest change; of points that were read from a draft, the newest point. */
  void takeBack(Kind kind) throws WorkshopException {
    GuidedPoints was = before.get(kind).poll();
    GuidedPoints next = was == null ? points.get(kind).withoutLast() : was;
    drafts.leave(kind, next);
    points.put(kind, next);
  }

  void beginAnew(Kind kind) throws WorkshopException {
    change(kind, GuidedPoints.NONE);
  }
}
