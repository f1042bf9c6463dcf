package sagwright.finish;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Estimate;

/**
 * The stiffness that a finished shaft will show at one set-up.
 *
 * @param stiffnessNPerMm of the shaft alone
 * @param errorsNPerMm what one standard uncertainty of each independent source of error does to it,
 *     with its sign; the sources are the same and in the same order for every set-up of a forecast
 * @param budget the same summed up as modulus, diameter and splice
 */
public record AskedStiffness(
    SetUp setUp, double stiffnessNPerMm, List<Double> errorsNPerMm, Budget budget) {
  public AskedStiffness {
    errorsNPerMm = List.copyOf(errorsNPerMm);
  }

  public Estimate estimate() {
    return new Estimate(stiffnessNPerMm, budget.combined());
  }
}
