package sagwright.finish;

import sagwright.beam.Taper;
import sagwright.modulus.ModulusAlong;

/**
 * What a blank gives to the shaft that is to come out of it: its outline and its wood. The moisture
 * is taken to stay as it is.
 *
 * @param taper the blank's outline
 * @param massG null or 0 where not weighed
 * @param modulusMPa of the shaft wood, x from the blank's tip end
 * @param modulusToShearRatio r = E/G
 * @param isSpliced whether the blank has splice wood in it already
 */
public record BlankWood(
    Taper taper,
    Double massG,
    ModulusAlong modulusMPa,
    double modulusToShearRatio,
    boolean isSpliced) {
  /** A blank of one wood. */
  public static BlankWood ofOneWood(
      Taper taper, Double massG, ModulusAlong modulusMPa, double modulusToShearRatio) {
    return new BlankWood(taper, massG, modulusMPa, modulusToShearRatio, false);
  }

  public boolean isWeighed() {
    return massG != null && massG != 0;
  }

  /** Mean density in kg/m³, null without a mass; one of 0 is none. */
  public Double densityKgM3() {
    return !isWeighed() ? null : massG / taper.volumeMm3() * 1e6;
  }
}
