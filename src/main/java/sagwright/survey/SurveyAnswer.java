package sagwright.survey;

import java.util.List;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Warning;

/**
 * What several runs on one shaft have shown together.
 *
 * @param runs how many there were
 * @param models those that the runs can bear, in the order one, ratio, straight, pieces
 * @param proposed the simplest that the data bear
 * @param reason why that one, as one sentence for people
 * @param runsStandingOut counted from 0: runs whose residual in the proposed model, left out of its
 *     own fit, is more than 4 of its standard uncertainties; they stay in the fit
 * @param repeatability null where no set-up was used twice
 */
public record SurveyAnswer(
    int runs,
    List<SurveyModel> models,
    SurveyModel proposed,
    String reason,
    List<Integer> runsStandingOut,
    Repeatability repeatability,
    List<Warning> warnings) {
  public SurveyAnswer {
    models = List.copyOf(models);
    runsStandingOut = List.copyOf(runsStandingOut);
    warnings = List.copyOf(warnings);
  }

  /**
   * The modulus along the shaft by the proposed model, with the covariance of its parameters in
   * MPa²; constant where the modulus is not seen to vary.
   */
  public ModulusAlong modulusAlong() {
    return proposed.along();
  }

  /** The same answer with other warnings. */
  public SurveyAnswer withWarnings(List<Warning> others) {
    return new SurveyAnswer(runs, models, proposed, reason, runsStandingOut, repeatability, others);
  }
}
