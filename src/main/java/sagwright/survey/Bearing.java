package sagwright.survey;

import org.apache.commons.math3.linear.RealMatrix;

/**
 * Whether the runs can bear a model: there are as many unlike set-ups (turned ones are alike) as it
 * has parameters; its moduli are above 0 and each is known better than to itself; its r is known
 * better than to the assumed r, and is not so far below 0 that no wood has it. One modulus alone is
 * always borne.
 */
final class Bearing {
  /** Within so many standard uncertainties of 0 a fitted r below 0 may still be a wood's. */
  private static final double RATIO_REACH = 2;

  private Bearing() {}

  /** The model fitted with the contract's weights; null where the runs cannot bear it. */
  static FittedModel borne(SurveyGround ground, ModelShape shape) {
    long unlike = ground.runs().stream().map(run -> run.setUp().turnedBy(0)).distinct().count();
    if (unlike < shape.parameters()) {
      return null;
    }
    FittedModel fitted = ground.fit(shape);
    return fitted != null && isBorne(ground, fitted) ? fitted : null;
  }

  private static boolean isBorne(SurveyGround ground, FittedModel fitted) {
    if (fitted.shape().equals(ModelShape.ONE)) {
      return true;
    }
    double[] parameters = fitted.fit().parameters();
    RealMatrix own = fitted.estimator().covariance(ground.independentCovarianceMPa2());
    for (int i = 0; i < parameters.length; i++) {
      double u = Math.sqrt(own.getEntry(i, i));
      boolean isRatio = fitted.shape().kind() == ModelKind.RATIO && i == parameters.length - 1;
      boolean isKnown = u <= (isRatio ? ground.runs().get(0).ratio() : parameters[i]);
      boolean canBe = isRatio ? parameters[i] > -RATIO_REACH * u : parameters[i] > 0;
      if (!isKnown || !canBe) {
        return false;
      }
    }
    return true;
  }
}
