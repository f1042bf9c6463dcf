package sagwright.survey;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What every model of a survey stands on: the runs, what is independent between them, and what is
 * common.
 *
 * @param runs as the models see them
 * @param independentMPa standard uncertainty of each run's modulus, own part: the weights
 * @param commonMPa2 covariance of the runs' moduli from all that is common to them
 * @param commonButRatioMPa2 the same without what the assumed r lends: for a model that fits r
 */
record SurveyGround(
    List<RunObservation> runs,
    double[] independentMPa,
    RealMatrix commonMPa2,
    RealMatrix commonButRatioMPa2) {
  /** Keeps the weights finite where a sheet states that nothing is uncertain; relative. */
  private static final double LEAST_UNCERTAINTY = 1e-6;

  static SurveyGround of(List<SurveyRun> runs) {
    List<RunObservation> observations = runs.stream().map(RunObservation::new).toList();
    double[] independent =
        observations.stream()
            .mapToDouble(
                run ->
                    Math.max(run.independentUncertaintyMPa(), LEAST_UNCERTAINTY * run.modulusMPa()))
            .toArray();
    CommonErrors common = CommonErrors.of(runs);
    return new SurveyGround(
        observations, independent, common.covarianceMPa2(true), common.covarianceMPa2(false));
  }

  int size() {
    return runs.size();
  }

  /** The same with every independent uncertainty made greater by a factor. */
  SurveyGround withIndependentTimes(double factor) {
    double[] greater = Arrays.stream(independentMPa).map(u -> u * factor).toArray();
    return new SurveyGround(runs, greater, commonMPa2, commonButRatioMPa2);
  }

  /** All but one run. */
  SurveyGround without(int run) {
    int[] kept = IntStream.range(0, size()).filter(i -> i != run).toArray();
    return new SurveyGround(
        IntStream.of(kept).mapToObj(runs::get).toList(),
        IntStream.of(kept).mapToDouble(i -> independentMPa[i]).toArray(),
        commonMPa2.getSubMatrix(kept, kept),
        commonButRatioMPa2.getSubMatrix(kept, kept));
  }

  /** The contract's weights: what is independent between runs. */
  Weighting independentWeights() {
    return Weighting.byUncertainties(independentMPa);
  }

  /** Weights by everything that is known of the runs' errors. */
  Weighting fullWeights(ModelShape shape) {
    return Weighting.byCovariance(covarianceMPa2(shape));
  }

  /** Covariance of the runs' moduli, own and common parts, as a model of this shape meets them. */
  RealMatrix covarianceMPa2(ModelShape shape) {
    RealMatrix common = shape.kind() == ModelKind.RATIO ? commonButRatioMPa2 : commonMPa2;
    return common.add(independentCovarianceMPa2());
  }

  /** Covariance of the runs' moduli, own parts alone. */
  RealMatrix independentCovarianceMPa2() {
    RealMatrix own = MatrixUtils.createRealMatrix(size(), size());
    for (int i = 0; i < size(); i++) {
      own.setEntry(i, i, independentMPa[i] * independentMPa[i]);
    }
    return own;
  }

  FittedModel fit(ModelShape shape) {
    return FittedModel.of(shape, runs, independentWeights());
  }
}
