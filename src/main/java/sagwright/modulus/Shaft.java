package sagwright.modulus;

import sagwright.beam.Splice;
import sagwright.beam.Taper;

/**
 * A shaft as it lies on the bench.
 *
 * @param taper its outline
 * @param widthMeasured for each station whether the width has a reading of its own; one that was
 *     left out shares its depth's error
 * @param species as written, null where unknown
 * @param massG null where not weighed
 * @param moisturePercent null where not measured
 * @param diameterUncertaintyMm standard uncertainty of each caliper reading
 * @param diameterCommonShare the share of that variance, 0 to 1, that is one error common to all
 *     diameters of the shaft
 * @param splice null for a shaft of one wood
 */
public record Shaft(
    Taper taper,
    boolean[] widthMeasured,
    String species,
    Double massG,
    Double moisturePercent,
    double diameterUncertaintyMm,
    double diameterCommonShare,
    Splice splice) {
  public static final double ASSUMED_DIAMETER_UNCERTAINTY_MM = 0.02;
  public static final double ASSUMED_DIAMETER_COMMON_SHARE = 0.5;

  /** Mean density in kg/m³, null without a mass. */
  public Double densityKgM3() {
    return massG == null ? null : massG / taper.volumeMm3() * 1e6;
  }
}
