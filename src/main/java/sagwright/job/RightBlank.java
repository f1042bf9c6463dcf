package sagwright.job;

import java.util.Optional;
import sagwright.beam.SetUp;

/** Whether a new result suits the blank's own record. */
public final class RightBlank {
  /** A result that differs by more is questioned. */
  public static final double DOUBT_PERCENT = 5;

  /** Positions nearer than this count as the same set-up. */
  private static final double SAME_PLACE_MM = 2;

  private RightBlank() {}

  /**
   * By how many percent a run differs from the newest earlier one that was made on the same shaft
   * and set-up, at whatever turn; empty where there is none.
   */
  public static Optional<Difference> of(TestedRun now, LaidBlank before) {
    TestedRun comparable = null;
    for (TestedRun earlier : before.runs()) {
      boolean isSame =
          earlier.run().id() != now.run().id()
              && earlier.sheet().hasSameShaftAs(now.sheet())
              && isSameSetUp(earlier.sheet().setUp().positions(), now.sheet().setUp().positions());
      if (isSame) {
        comparable = earlier;
      }
    }
    return Optional.ofNullable(comparable)
        .map(earlier -> new Difference(percent(now, earlier), earlier));
  }

  /** A difference in percent of the earlier run's stiffness, and that run. */
  public record Difference(double percent, TestedRun earlier) {
    public boolean isDoubtful() {
      return Math.abs(percent) > DOUBT_PERCENT;
    }
  }

  private static double percent(TestedRun now, TestedRun earlier) {
    double was = earlier.evaluation().shaftStiffnessNPerMm();
    return 100 * (now.evaluation().shaftStiffnessNPerMm() - was) / was;
  }

  private static boolean isSameSetUp(SetUp a, SetUp b) {
    return Math.abs(a.supportAMm() - b.supportAMm()) < SAME_PLACE_MM
        && Math.abs(a.supportBMm() - b.supportBMm()) < SAME_PLACE_MM
        && Math.abs(a.loadMm() - b.loadMm()) < SAME_PLACE_MM
        && Math.abs(a.gaugeMm() - b.gaugeMm()) < SAME_PLACE_MM;
  }
}
