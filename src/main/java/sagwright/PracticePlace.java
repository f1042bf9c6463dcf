package sagwright;

import java.time.Instant;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.SplicedTaper;
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
  private final Calibration truly;
  private final Supplier<Calibration> believed;
  private final ToDoubleFunction<LaidBlank> trueModulusMPa;

  /** A bench whose calibration is the truth. */
  PracticePlace(long seed, ToDoubleFunction<LaidBlank> trueModulusMPa) {
    this(seed, trueModulusMPa, CALIBRATION, () -> CALIBRATION);
  }

  /**
   * @param trueModulusMPa what the wood of a blank really is, which the program must find
   * @param truly what load cell, gauge and frame really are
   * @param believed what the workshop takes them for, null where they were never calibrated
   */
  PracticePlace(
      long seed,
      ToDoubleFunction<LaidBlank> trueModulusMPa,
      Calibration truly,
      Supplier<Calibration> believed) {
    this.head =
        new PracticeHead(truly, PracticeOptions.BELIEVABLE.withSeed(seed), PracticeClock.real());
    this.trueModulusMPa = trueModulusMPa;
    this.truly = truly;
    this.believed = believed;
  }

  @Override
  public LineOpener opener() {
    return head;
  }

  @Override
  public Calibration calibration() {
    return believed.get();
  }

  @Override
  public void laid(LaidBlank blank) {
    SplicedTaper shaft = new SplicedTaper(blank.shaft().taper(), blank.shaft().splice());
    double mmPerN =
        SplicedFlexibility.of(shaft, blank.setUp().positions())
            .mmPerN(trueModulusMPa.applyAsDouble(blank), blank.modulusToShearRatio());
    head.lay(mmPerN + truly.frameComplianceMmPerN());
  }

  @Override
  public void hangs(double loadN) {
    head.hang(loadN);
  }

  @Override
  public void lifts(double mm) {
    head.lift(mm);
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
