package sagwright.survey;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Runs that do not belong: what a run showed, held against what the proposed model, fitted to the
 * others, would have it show. To first order that needs no further fit: with leverage h the
 * residual left out of its own fit is e/(1 − h) (Belsley, Kuh and Welsch, Regression Diagnostics,
 * 1980, 2.1), borders counted among the parameters. Its standard uncertainty counts what the run
 * and the others have of their own, and of what they have in common only what does not cancel.
 */
final class StandingOut {
  /** docs/contract.md, section 8. */
  static final double LIMIT = 4;

  /** Where the others determine less than this share of a run, they cannot judge it. */
  private static final double LEAST_FREEDOM = 1e-3;

  private StandingOut() {}

  /** Counted from 0. */
  static List<Integer> runs(SurveyGround ground, FittedModel proposed) {
    List<Integer> standingOut = new ArrayList<>();
    double[] standardised = standardised(ground, proposed);
    for (int run = 0; run < standardised.length; run++) {
      if (Math.abs(standardised[run]) > LIMIT) {
        standingOut.add(run);
      }
    }
    return standingOut;
  }

  /**
   * Each run's residual left out of its own fit, over its standard uncertainty; 0 where the others
   * cannot judge it.
   */
  static double[] standardised(SurveyGround ground, FittedModel proposed) {
    RealMatrix leverage = proposed.change().multiply(proposed.estimator().byShown());
    RealMatrix covariance = ground.covarianceMPa2(proposed.shape());
    int n = ground.size();
    double[] standardised = new double[n];
    for (int run = 0; run < n; run++) {
      double freedom = 1 - leverage.getEntry(run, run);
      if (freedom < LEAST_FREEDOM) {
        continue;
      }
      double[] contrast = leverage.getRow(run);
      for (int i = 0; i < n; i++) {
        contrast[i] = (i == run ? 1 - contrast[i] : -contrast[i]) / freedom;
      }
      double[] carried = covariance.operate(contrast);
      double variance = 0;
      for (int i = 0; i < n; i++) {
        variance += contrast[i] * carried[i];
      }
      double residual = proposed.fit().residualsMPa()[run] / freedom;
      standardised[run] = residual / Math.sqrt(variance);
    }
    return standardised;
  }
}
