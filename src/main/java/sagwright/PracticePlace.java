package sagwright;

import java.time.Instant;
import sagwright.beam.Flexibility;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LineOpener;
import sagwright.bench.LoadCalibration;
import sagwright.bench.practice.PracticeClock;
import sagwright.bench.practice.PracticeHead;
import sagwright.bench.practice.PracticeOptions;
import sagwright.job.BenchPlace;
import sagwright.job.LaidBlank;

/** The practice bench: what is laid on it bends after a true modulus of its own. */
final class PracticePlace implements BenchPlace {
  /** Invented, for the practice bench alone; it never runs out. */
  private static final Calibration CALIBRATION =
      new Calibration(
          Instant.parse("2026-03-02T09:00:00Z"),
          36_500,
          "practice",
          new LoadCalibration(2.5e-5, 0.1, 0.01, 50),
          new GaugeCalibration(0.001, 0.05, 0.002, 25, 0),
          0.002,
          0);

  private final PracticeHead head;
  private final TrueModulus trueModulus;

  /** What the wood of a blank really is, which the program must find. */
  interface TrueModulus {
    double ofMPa(LaidBlank blank);
  }

  PracticePlace(long seed, TrueModulus trueModulus) {
    this.head =
        new PracticeHead(
            CALIBRATION, PracticeOptions.BELIEVABLE.withSeed(seed), PracticeClock.real());
    this.trueModulus = trueModulus;
  }

  @Override
  public LineOpener opener() {
    return head;
  }

  @Override
  public Calibration calibration() {
    return CALIBRATION;
  }

  @Override
  public void laid(LaidBlank blank) {
    double perMm =
        Flexibility.of(blank.shaft().taper(), blank.setUp().positions())
            .perMm(blank.modulusToShearRatio());
    head.lay(perMm / trueModulus.ofMPa(blank) + CALIBRATION.frameComplianceMmPerN());
  }

  @Override
  public void follow(BenchSnapshot snapshot) {
    head.accept(snapshot);
  }

  @Override
  public boolean isPractice() {
    return true;
  }
}
