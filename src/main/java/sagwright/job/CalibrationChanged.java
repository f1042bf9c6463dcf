package sagwright.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LoadCalibration;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationReader;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;
import sagwright.workshop.KeptCalibration;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * That the calibration in force now reads a run's stiffness otherwise than the one that it was
 * recorded by. The run stays as it is; whoever relies on it should know.
 *
 * @param percent by which it reads more now, below 0 for less
 * @param made when the newer one was made
 */
record CalibrationChanged(long runId, double percent, Instant made) implements Warning {
  @Override
  public String inWords() {
    return String.format(
        Locale.ROOT,
        "by the calibration of %s run %d would be %.1f %% %s than it was recorded",
        Days.day(made),
        runId,
        Math.abs(percent),
        percent > 0 ? "stiffer" : "softer");
  }

  /** Of those runs for which the two differ by more than their uncertainties allow, at 95 %. */
  static List<Warning> since(Workshop workshop, List<Long> runIds) throws WorkshopException {
    Optional<KeptCalibration> kept = workshop.calibrations().inForce();
    List<Warning> changed = new ArrayList<>();
    if (kept.isPresent()) {
      Calibration now = read(kept.get().document());
      for (long runId : runIds) {
        Run run = workshop.runs().run(runId);
        Optional<String> by = workshop.runs().calibration(run);
        if (by.isPresent()) {
          of(runId, read(by.get()), now).ifPresent(changed::add);
        }
      }
    }
    return changed;
  }

  static Optional<CalibrationChanged> of(long runId, Calibration then, Calibration now) {
    if (!then.isComplete() || !now.isComplete()) {
      return Optional.empty();
    }
    LoadCalibration load = then.load();
    GaugeCalibration gauge = then.gauge();
    double ratio =
        now.load().newtonPerCount()
            / load.newtonPerCount()
            * (gauge.mmPerStep() / now.gauge().mmPerStep());
    double percent = 100 * (ratio - 1);
    double uncertainty =
        Math.hypot(
            Math.hypot(load.scaleUncertaintyPercent(), now.load().scaleUncertaintyPercent()),
            Math.hypot(gauge.scaleUncertaintyPercent(), now.gauge().scaleUncertaintyPercent()));
    return Math.abs(percent) > Estimate.COVERAGE_FACTOR_95 * uncertainty
        ? Optional.of(new CalibrationChanged(runId, percent, now.made()))
        : Optional.empty();
  }

  private static Calibration read(String document) throws WorkshopException {
    try {
      return CalibrationReader.read(document);
    } catch (BadDocumentException e) {
      throw new WorkshopException("a calibration on the record: " + e.getMessage());
    }
  }
}
