package sagwright.modulus;

import java.util.Locale;
import sagwright.run.PoorRunException;

/** Picks the way from a stiffness to a modulus that suits the shaft. */
final class ModulusSolver {
  private ModulusSolver() {}

  /**
   * @param stiffnessNPerMm as the bench shows it
   * @throws PoorRunException where the frame or the gauge's spring would account for more than all
   *     that was measured
   */
  static StiffnessSolution solve(BendTest test, double stiffnessNPerMm) throws PoorRunException {
    double frame = test.setUp().frameComplianceMmPerN();
    double givenMmPerN = 1 / stiffnessNPerMm - frame;
    if (!(givenMmPerN > 0)) {
      throw new PoorRunException(
          String.format(
              Locale.ROOT,
              "the frame alone would give %.4g mm per N, more than the %.4g mm per N measured:"
                  + " frameComplianceMmPerN cannot be right",
              frame,
              1 / stiffnessNPerMm));
    }
    if (test.shaft().splice() != null) {
      return new SplicedSolution(test, stiffnessNPerMm, givenMmPerN);
    }
    StiffnessSolution solution = new PlainSolution(test, stiffnessNPerMm, givenMmPerN);
    if (!(solution.modulusMPa() > 0)) {
      throw new PoorRunException(
          "the gauge's spring alone would be stiffer than what was measured:"
              + " gaugeSpringNPerMm cannot be right");
    }
    return solution;
  }
}
