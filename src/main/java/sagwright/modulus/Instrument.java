package sagwright.modulus;

import sagwright.run.ReadingUncertainty;

/**
 * What load cell and gauge are worth: standard uncertainties of a reading and of the scales (one
 * error a run), and the spring of the gauge's plunger.
 */
public record Instrument(
    double loadUncertaintyN,
    double loadScaleUncertaintyPercent,
    double gaugeUncertaintyMm,
    double gaugeScaleUncertaintyPercent,
    double gaugeSpringNPerMm) {
  /** What a sheet takes where it says nothing (docs/contract.md, section 3). */
  public static final Instrument ASSUMED = new Instrument(0.02, 0.1, 0.005, 0.05, 0);

  public ReadingUncertainty ofOneReading() {
    return new ReadingUncertainty(loadUncertaintyN, gaugeUncertaintyMm);
  }
}
