package sagwright.survey;

import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Runs that do not belong: what a run showed, held against what the proposed model, fitted to the
 * others, would have it show. To first order that needs no further fit: with leverage h the
 * residual left out of its own fit is e/(1 − h) (Belsley, Kuh and Welsch, Regression Diagnostics,
 * 1980, 2.1), borders counted among the parameters. Its standard uncertainty counts what the run
 * and the others have of their own, and of what they have in common only what does not cancel.
 *
 * <p>A gross one pulls the fit that the others are held against, so that right runs would seem
 * wrong beside it. The worst is therefore named first, and the others are judged without it, as
 * long as enough are left to judge; of runs that are equally far off none is the worst, and all of
 * them are named. In a model with borders the worst cannot be told that way, since a gross run
 * moves the borders: there all that stand out are named at once.
 */
final class StandingOut {
  /** docs/contract.md, section 8. */
  static final double LIMIT = 4;

  /** Where the others determine less than this share of a run, they cannot judge it. */
  private static final double LEAST_FREEDOM = 1e-3;

  private StandingOut() {}

  /** Relative; runs that lie this equally far off cannot be told apart. */
  private static final double AS_FAR = 1e-6;

  /** Runs counted from 0, held against a model of this shape. */
  static List<Integer> runs(SurveyGround ground, ModelShape shape) {
    List<Integer> others = IntStream.range(0, ground.size()).boxed().collect(toList());
    List<Integer> named = new ArrayList<>();
    SurveyGround left = ground;
    FittedModel fitted = Bearing.borne(ground, shape);
    while (fitted != null && left.size() > fitted.fit().parameters().length) {
      double[] off = standardised(left, fitted);
      double worst = Arrays.stream(off).map(Math::abs).max().orElseThrow();
      if (worst <= LIMIT) {
        break;
      }
      boolean atOnce = shape.kind() == ModelKind.PIECES;
      double bound = atOnce ? LIMIT : worst * (1 - AS_FAR);
      for (int i = off.length - 1; i >= 0; i--) {
        if (Math.abs(off[i]) > bound) {
          named.add(others.remove(i));
          left = others.isEmpty() ? left : left.without(i);
        }
      }
      fitted = atOnce || others.isEmpty() ? null : Bearing.borne(left, shape);
    }
    return named.stream().sorted().toList();
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
