package sagwright.survey;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import sagwright.beam.FlexibilityGradient;
import sagwright.modulus.BudgetSource;
import sagwright.modulus.Evaluation;
import sagwright.modulus.Shaft;
import sagwright.uncertainty.Contribution;

/**
 * What one shaft and one bench lend to all runs alike: each caliper reading's own error, the error
 * common to all of them, both scales, the frame, the ratio r. Each is one standardised error; a run
 * feels it by its sensitivity times the standard uncertainty that its own sheet states.
 */
final class CommonErrors {
  /** Which of the errors is that of the ratio r: a model that fits r is free of it. */
  private static final int RATIO_FROM_LAST = 1;

  /** A row for each run, a column for each error, MPa. */
  private final double[][] effectMPa;

  private CommonErrors(double[][] effectMPa) {
    this.effectMPa = effectMPa;
  }

  static CommonErrors of(List<SurveyRun> runs) {
    return new CommonErrors(runs.stream().map(CommonErrors::effects).toArray(double[][]::new));
  }

  /** The covariance that the common errors give the runs' moduli, MPa². */
  RealMatrix covarianceMPa2(boolean withRatio) {
    int n = effectMPa.length;
    RealMatrix covariance = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      int errors = effectMPa[i].length - (withRatio ? 0 : RATIO_FROM_LAST);
      for (int j = 0; j < n; j++) {
        double sum = 0;
        for (int e = 0; e < errors; e++) {
          sum += effectMPa[i][e] * effectMPa[j][e];
        }
        covariance.setEntry(i, j, sum);
      }
    }
    return covariance;
  }

  private static double[] effects(SurveyRun run) {
    Shaft shaft = run.test().shaft();
    Evaluation evaluation = run.evaluation();
    int stations = shaft.taper().stationCount();
    double[] effects = new double[2 * stations + 6];
    int next = 2 * stations;
    if (shaft.splice() == null) {
      effects[next] = diameterEffects(run, effects);
    } else {
      effects[next] = contribution(evaluation, BudgetSource.DIAMETER);
    }
    effects[next + 1] = contribution(evaluation, BudgetSource.SPLICE);
    effects[next + 2] = contribution(evaluation, BudgetSource.LOAD_SCALE);
    effects[next + 3] = contribution(evaluation, BudgetSource.GAUGE_SCALE);
    effects[next + 4] = contribution(evaluation, BudgetSource.FRAME);
    effects[next + 5] = contribution(evaluation, BudgetSource.RATIO);
    return effects;
  }

  /** Fills in the effects of the readings' own errors; gives that of the error common to all. */
  private static double diameterEffects(SurveyRun run, double[] effects) {
    Shaft shaft = run.test().shaft();
    RunObservation observed = new RunObservation(run);
    double r = observed.ratio();
    double spring = observed.springNPerMm();
    double perGiven = 1 / observed.givenMmPerN();
    FlexibilityGradient atLoad = FlexibilityGradient.of(shaft.taper(), observed.setUp());
    FlexibilityGradient atGauge = FlexibilityGradient.atGauge(shaft.taper(), observed.setUp());
    double u = shaft.diameterUncertaintyMm();
    double own = u * Math.sqrt(1 - shaft.diameterCommonShare());
    double common = 0;
    for (int i = 0; i < shaft.taper().stationCount(); i++) {
      double depth = perGiven * atLoad.byDepth(i, r) - spring * atGauge.byDepth(i, r);
      double width = perGiven * atLoad.byWidth(i, r) - spring * atGauge.byWidth(i, r);
      common += depth + width;
      boolean apart = shaft.widthMeasured()[i];
      effects[2 * i] = own * (apart ? depth : depth + width);
      effects[2 * i + 1] = apart ? own * width : 0;
    }
    return u * Math.sqrt(shaft.diameterCommonShare()) * common;
  }

  private static double contribution(Evaluation evaluation, String source) {
    return evaluation.budget().contributions().stream()
        .filter(c -> c.source().equals(source))
        .mapToDouble(Contribution::standardUncertainty)
        .sum();
  }
}
