package sagwright.finish;

import java.util.List;
import sagwright.beam.SetUp;

/**
 * What is to be forecast.
 *
 * @param plan without problems (FinishCheck)
 * @param setUps on the finished shaft, the foremost first; one or more
 * @param wantedNPerMm the stiffness wanted at the first of them: where the modulus varies along the
 *     blank and no cut is given, the cut is chosen for it
 */
public record ForecastRequest(
    BlankWood blank, FinishPlan plan, List<SetUp> setUps, double wantedNPerMm) {
  public ForecastRequest {
    setUps = List.copyOf(setUps);
  }
}
