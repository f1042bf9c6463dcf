package sagwright.bench;

/**
 * What a test on the bench is led by.
 *
 * @param calibration complete; in force while the test lasts
 * @param limits how far to load
 */
public record TestPlan(Calibration calibration, LoadLimits limits) {
  public TestPlan {
    if (!calibration.isComplete()) {
      throw new IllegalArgumentException("a test needs a calibration of both load and gauge");
    }
  }

  /** What neither shaft nor load cell should be taken beyond, in N. */
  double mostN() {
    return Math.min(limits.safeN(), calibration.load().greatestN());
  }
}
