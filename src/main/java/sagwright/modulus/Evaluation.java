package sagwright.modulus;

import java.util.List;
import sagwright.run.StiffnessFit;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Warning;

/**
 * What a run has shown. Uncertainties are standard (one sigma).
 *
 * @param fit the line through the loading branch
 * @param stiffnessStdUncertaintyNPerMm of {@code fit.stiffnessNPerMm()}, line and both scales
 * @param shaftStiffnessNPerMm the shaft's alone, frame and gauge spring taken off
 * @param modulusMPa of the (shaft) wood
 * @param modulusAt12PercentMPa null where moisture is unknown or outside the formula's range
 * @param densityKgM3 null without a mass
 * @param peakStressMPa largest bending stress at the greatest load that was kept
 * @param budget contributions in MPa whose combination is the modulus's uncertainty
 */
public record Evaluation(
    StiffnessFit fit,
    double stiffnessStdUncertaintyNPerMm,
    double shaftStiffnessNPerMm,
    double modulusMPa,
    Double modulusAt12PercentMPa,
    Double densityKgM3,
    double peakStressMPa,
    Budget budget,
    List<Warning> warnings) {
  public Evaluation {
    warnings = List.copyOf(warnings);
  }

  public double modulusStdUncertaintyMPa() {
    return budget.combined();
  }
}
