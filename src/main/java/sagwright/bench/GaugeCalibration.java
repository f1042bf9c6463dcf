package sagwright.bench;

/**
 * How gauge steps become millimetres.
 *
 * @param mmPerStep not 0; negative where steps fall as the shaft is loaded
 * @param scaleUncertaintyPercent standard uncertainty of that factor, one error a run
 * @param uncertaintyMm standard uncertainty of one reading, independent from reading to reading
 * @param greatestMm the greatest travel that the calibration covers
 * @param springNPerMm what the plunger pushes back with
 */
public record GaugeCalibration(
    double mmPerStep,
    double scaleUncertaintyPercent,
    double uncertaintyMm,
    double greatestMm,
    double springNPerMm) {
  public GaugeCalibration {
    Calibration.requireFactor("gauge.mmPerStep", mmPerStep);
  }

  /** Steps reckoned from a zero (both in steps) to millimetres. */
  public double millimetres(double steps, double zeroSteps) {
    return (steps - zeroSteps) * mmPerStep;
  }

  /** The nearest whole step to a deflection; the zero is step 0. */
  public long steps(double deflectionMm) {
    return Math.round(deflectionMm / mmPerStep);
  }
}
