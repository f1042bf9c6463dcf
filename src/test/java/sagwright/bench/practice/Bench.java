package sagwright.bench.practice;

import java.time.Instant;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LoadCalibration;
import sagwright.bench.LoadLimits;
import sagwright.bench.TestPlan;

/** The calibration of an invented bench. */
final class Bench {
  static final Calibration CALIBRATION =
      new Calibration(
          Instant.parse("2026-03-02T09:00:00Z"),
          365,
          "KM",
          new LoadCalibration(2.5e-5, 0.1, 0.02, 50),
          new GaugeCalibration(0.001, 0.05, 0.005, 25, 0),
          0.002,
          0);
  static final TestPlan PLAN = new TestPlan(CALIBRATION, new LoadLimits(20, 40));

  private Bench() {}
}
