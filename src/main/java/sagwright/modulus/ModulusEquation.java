package sagwright.modulus;

import sagwright.beam.Flexibility;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.SplicedTaper;
import sagwright.beam.Taper;

/**
 * The measurement model: {@code E = J(c,g)/(1/k − C) − s·J(g,g)} for a shaft of one wood; for a
 * spliced one the E at which the spliced shaft gives as much (docs/contract.md, sections 2 and 3).
 *
 * @param splice null for a shaft of one wood
 * @param springNPerMm the gauge's spring; 0 for a spliced shaft
 */
record ModulusEquation(Taper taper, Splice splice, SetUp setUp, double springNPerMm) {
  /**
   * @param givenMmPerN the shaft's give per newton, 1/k − C
   * @param ratio r = E/G
   * @param spliceModulusMPa of the splice wood; not used for a shaft of one wood
   */
  double modulusMPa(double givenMmPerN, double ratio, double spliceModulusMPa) {
    if (splice != null) {
      Splice drawn =
          new Splice(
              splice.fromMm(),
              splice.coreHalfAtButtMm(),
              splice.densityKgM3(),
              spliceModulusMPa,
              splice.modulusUncertaintyPercent());
      return SplicedFlexibility.of(new SplicedTaper(taper, drawn), setUp)
          .modulusFor(givenMmPerN, ratio)
          .modulusMPa();
    }
    double modulus = Flexibility.of(taper, setUp).perMm(ratio) / givenMmPerN;
    return springNPerMm == 0
        ? modulus
        : modulus - springNPerMm * Flexibility.atGauge(taper, setUp).perMm(ratio);
  }
}
