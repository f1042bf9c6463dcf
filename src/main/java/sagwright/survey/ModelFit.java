package sagwright.survey;

import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.util.Pair;

/**
 * A model's parameters by weighted least squares on the moduli that the runs show: what is left
 * over in each run, and χ².
 *
 * @param parameters of the model, as {@link AlongModel} has them
 * @param residualsMPa shown by the run less shown by the model
 * @param change ∂(shown by the model)/∂(parameter): a row for each run
 */
record ModelFit(double[] parameters, double[] residualsMPa, RealMatrix change, double chiSquared) {
  private static final int MOST_EVALUATIONS = 200;

  /** Relative; far below what any digit of an answer needs, and quadratic steps reach it. */
  private static final double TOLERANCE = 1e-13;

  /** Null where the search ends nowhere. */
  static ModelFit of(AlongModel model, double[] moduliMPa, double ratio, Weighting weighting) {
    int n = moduliMPa.length;
    int p = model.parameterCount();
    double[] shown = new double[n];
    double[][] change = new double[n][p];
    double mean = java.util.Arrays.stream(moduliMPa).average().orElseThrow();
    MultivariateJacobianFunction weighed =
        point -> {
          model.show(point.toArray(), shown, change);
          return new Pair<>(
              new ArrayRealVector(weighting.weigh(shown), false),
              weighting.weigh(MatrixUtils.createRealMatrix(change)));
        };
    double[] parameters;
    try {
      parameters =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(TOLERANCE)
              .withParameterRelativeTolerance(TOLERANCE)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(model.start(mean, ratio))
                      .model(weighed)
                      .target(weighting.weigh(moduliMPa))
                      .lazyEvaluation(false)
                      .maxEvaluations(MOST_EVALUATIONS)
                      .maxIterations(MOST_EVALUATIONS)
                      .build())
              .getPoint()
              .toArray();
    } catch (MathIllegalStateException notFound) {
      return null;
    }
    model.show(parameters, shown, change);
    double[] residuals = new double[n];
    double chiSquared = 0;
    for (int i = 0; i < n; i++) {
      residuals[i] = moduliMPa[i] - shown[i];
    }
    for (double w : weighting.weigh(residuals)) {
      chiSquared += w * w;
    }
    return new ModelFit(parameters, residuals, MatrixUtils.createRealMatrix(change), chiSquared);
  }
}
