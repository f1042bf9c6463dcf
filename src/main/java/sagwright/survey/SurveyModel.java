package sagwright.survey;

import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/**
 * One of the four models, fitted to all runs. Standard uncertainties are total: what is independent
 * between runs and what is common to them.
 *
 * @param along the modulus along the shaft and its covariance: one piece for {@link ModelKind#ONE}
 *     and {@link ModelKind#RATIO}, two knots at the ends for {@link ModelKind#STRAIGHT}
 * @param ratio r = E/G as fitted; null but for {@link ModelKind#RATIO}
 * @param chiSquared of the residuals over what is independent between runs
 * @param parameters free borders counted
 * @param aicc Akaike's criterion for few runs from these; null where there are too few for it
 * @param residualsMPa for each run, the modulus that it showed less the one that the model shows
 * @param standardisedResiduals the same over the run's independent standard uncertainty
 */
public record SurveyModel(
    ModelKind kind,
    ModulusAlong along,
    Estimate ratio,
    double chiSquared,
    int parameters,
    Double aicc,
    double[] residualsMPa,
    double[] standardisedResiduals) {
  /** The modulus at x mm from the tip end with its standard uncertainty, MPa. */
  public Estimate modulusAt(double xMm) {
    double[][] covariance = along.covarianceMPa2();
    double variance = 0;
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j < covariance.length; j++) {
        variance += along.shareOf(i, xMm) * covariance[i][j] * along.shareOf(j, xMm);
      }
    }
    return new Estimate(along.at(xMm), Math.sqrt(variance));
  }
}
