package sagwright.modulus;

import sagwright.beam.SetUp;

/**
 * A set-up with what is known of its own errors.
 *
 * @param positionUncertaintyMm standard uncertainty of each of the four positions, one error a run
 * @param frameComplianceMmPerN how far the frame gives per newton
 * @param frameComplianceUncertaintyMmPerN its standard uncertainty
 */
public record BenchSetUp(
    SetUp positions,
    double positionUncertaintyMm,
    double frameComplianceMmPerN,
    double frameComplianceUncertaintyMmPerN) {
  public static final double ASSUMED_POSITION_UNCERTAINTY_MM = 0.5;
  public static final double ASSUMED_FRAME_COMPLIANCE_MM_PER_N = 0.0020;
}
