package sagwright.bench;

import java.time.Duration;
import java.time.Instant;

/**
 * A bench's calibration, as docs/contract.md, section 6, has it.
 *
 * @param made when
 * @param validDays how long it holds
 * @param by who made it; null where not said
 * @param load null where the load has not been calibrated yet
 * @param gauge null where the gauge has not been calibrated yet
 * @param frameComplianceMmPerN how far the frame gives per newton, 0 or above
 * @param frameComplianceUncertaintyMmPerN its standard uncertainty
 */
public record Calibration(
    Instant made,
    int validDays,
    String by,
    LoadCalibration load,
    GaugeCalibration gauge,
    double frameComplianceMmPerN,
    double frameComplianceUncertaintyMmPerN) {
  /** Whether both parts are there: without either no run can be recorded. */
  public boolean isComplete() {
    return load != null && gauge != null;
  }

  public Instant validUntil() {
    return made.plus(Duration.ofDays(validDays));
  }

  /** From the moment it was made to the end of its days, both included. */
  public boolean isValidAt(Instant instant) {
    return !instant.isBefore(made) && !instant.isAfter(validUntil());
  }

  static void requireFactor(String name, double factor) {
    if (factor == 0 || !Double.isFinite(factor)) {
      throw new IllegalArgumentException(name + " must be a number other than 0, is " + factor);
    }
  }
}
