package sagwright.sheet;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.modulus.BenchSetUp;

/**
 * A set-up as written, before it meets a shaft and a calibration.
 *
 * @param positions supports, load, gauge and turn
 * @param positionUncertaintyMm null where left out
 * @param frameComplianceMmPerN null where left out: then the calibration's counts
 * @param frameComplianceUncertaintyMmPerN null where left out
 */
public record SetUpDocument(
    SetUp positions,
    Double positionUncertaintyMm,
    Double frameComplianceMmPerN,
    Double frameComplianceUncertaintyMmPerN) {
  /** The keys whose defaults are taken on a calibrated bench. */
  List<String> assumed() {
    return positionUncertaintyMm == null ? List.of("positionUncertaintyMm") : List.of();
  }

  /** The set-up on a bench whose frame compliance is known apart from it. */
  public BenchSetUp onBench(double frameMmPerN, double frameUncertaintyMmPerN) {
    boolean own = frameComplianceMmPerN != null;
    double ownUncertainty =
        frameComplianceUncertaintyMmPerN == null ? 0 : frameComplianceUncertaintyMmPerN;
    return new BenchSetUp(
        positions,
        positionUncertaintyMm == null
            ? BenchSetUp.ASSUMED_POSITION_UNCERTAINTY_MM
            : positionUncertaintyMm,
        own ? frameComplianceMmPerN : frameMmPerN,
        own ? ownUncertainty : frameUncertaintyMmPerN);
  }
}
