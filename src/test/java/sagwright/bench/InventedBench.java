package sagwright.bench;

import java.time.Duration;
import java.time.Instant;

/**
 * The bench that these tests are made on: 40,000 counts a newton, 1,000 steps a millimetre, loaded
 * to 20 N.
 */
public final class InventedBench {
  public static final Calibration CALIBRATION =
      new Calibration(
          Instant.parse("2026-03-02T09:00:00Z"),
          365,
          "KM",
          new LoadCalibration(2.5e-5, 0.1, 0.02, 50),
          new GaugeCalibration(0.001, 0.05, 0.005, 25, 0),
          0.002,
          0);
  public static final TestPlan PLAN = new TestPlan(CALIBRATION, new LoadLimits(20, 40));

  /** For heads that answer at once and plugs that are put back at once. */
  public static final HeadTiming QUICK =
      new HeadTiming(
          Duration.ofMillis(100),
          Duration.ofMillis(300),
          Duration.ofMillis(1500),
          Duration.ofMillis(50));

  private InventedBench() {}
}
