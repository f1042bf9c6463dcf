package sagwright.screen.checks;

import java.util.List;
import java.util.Optional;
import sagwright.bench.HealthReport;
import sagwright.check.CalibrationPoint;
import sagwright.check.FrameCompliance;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.job.DueCheck;
import sagwright.job.RodStanding;

/**
 * All that the checks show at one moment. Immutable.
 *
 * @param due the most urgent first
 * @param load its calibration in the making
 * @param gauge likewise
 * @param gravity of the place; empty where nobody has said so
 * @param frame worked out from a bar and not kept yet; null for none
 * @param initials offered to sign with; empty for none
 * @param undoable what Ctrl Z takes back; empty for nothing
 */
public record ChecksView(
    List<DueCheck> due,
    Line load,
    Line gauge,
    Optional<LocalGravity> gravity,
    Frame frame,
    RodStanding rod,
    Health health,
    String initials,
    String undoable) {
  public ChecksView {
    due = List.copyOf(due);
  }

  /**
   * A calibration in the making.
   *
   * @param taken as typed, in g or mm
   * @param points the same in N or mm
   * @param line null with too few points
   */
  public record Line(GuidedPoints taken, List<CalibrationPoint> points, LineCalibration line) {
    public static final Line NONE = new Line(GuidedPoints.NONE, List.of(), null);

    public Line {
      points = List.copyOf(points);
    }
  }

  /**
   * What a bar has shown of the frame.
   *
   * @param bar its tag or file
   */
  public record Frame(String bar, FrameCompliance compliance) {}

  /**
   * How the line to the head does.
   *
   * @param report null while no reading has come
   * @param inCounts whether the report's N and mm are counts and steps
   * @param line in words
   * @param lastRefused null where none was
   */
  public record Health(HealthReport report, boolean inCounts, String line, String lastRefused) {
    public static final Health NONE = new Health(null, true, "", null);
  }
}
