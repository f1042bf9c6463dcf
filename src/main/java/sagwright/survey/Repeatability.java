package sagwright.survey;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import sagwright.beam.SetUp;

/**
 * How well the bench repeats: the scatter of the moduli that runs of one set-up, turned or not,
 * have shown about their mean, pooled over all set-ups that were used more than once (JCGM 100, 4.2
 * and H.5).
 *
 * @param degreesOfFreedom runs in such set-ups less such set-ups
 * @param standardDeviationMPa of one run
 * @param statedMPa root mean square of what these runs' sheets state as independent
 * @param chiSquared of the scatter over all that is stated
 */
public record Repeatability(
    int degreesOfFreedom, double standardDeviationMPa, double statedMPa, double chiSquared) {
  /** By luck alone the scatter would be called worse than stated once in a hundred surveys. */
  private static final double SURENESS = 0.99;

  /** Null where no set-up was used twice. */
  static Repeatability of(SurveyGround ground) {
    List<List<Integer>> setUps = repeatedSetUps(ground.runs());
    List<Integer> runs = setUps.stream().flatMap(List::stream).toList();
    if (runs.isEmpty()) {
      return null;
    }
    int[] kept = runs.stream().mapToInt(i -> i).toArray();
    RealMatrix covariance = ground.covarianceMPa2(ModelShape.ONE).getSubMatrix(kept, kept);
    RealMatrix means = MatrixUtils.createRealMatrix(kept.length, setUps.size());
    double[] shown = new double[kept.length];
    double squares = 0;
    double stated = 0;
    int next = 0;
    for (int s = 0; s < setUps.size(); s++) {
      List<Integer> group = setUps.get(s);
      double mean =
          group.stream().mapToDouble(i -> ground.runs().get(i).modulusMPa()).average().orElse(0);
      for (int i : group) {
        means.setEntry(next, s, 1);
        shown[next] = ground.runs().get(i).modulusMPa();
        squares += (shown[next] - mean) * (shown[next] - mean);
        stated += ground.independentMPa()[i] * ground.independentMPa()[i];
        next++;
      }
    }
    int freedom = kept.length - setUps.size();
    return new Repeatability(
        freedom,
        Math.sqrt(squares / freedom),
        Math.sqrt(stated / kept.length),
        chiSquared(Weighting.byCovariance(covariance), means, shown));
  }

  private static double chiSquared(Weighting weighting, RealMatrix means, double[] shown) {
    RealMatrix fitted = Estimator.of(means, weighting).byShown();
    double[] model = means.operate(fitted.operate(shown));
    double[] residuals = new double[shown.length];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = shown[i] - model[i];
    }
    double sum = 0;
    for (double w : weighting.weigh(residuals)) {
      sum += w * w;
    }
    return sum;
  }

  private static List<List<Integer>> repeatedSetUps(List<RunObservation> runs) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      SetUp here = runs.get(i).setUp().turnedBy(0);
      List<Integer> home =
          groups.stream()
              .filter(g -> runs.get(g.get(0)).setUp().turnedBy(0).equals(here))
              .findFirst()
              .orElse(null);
      if (home == null) {
        home = new ArrayList<>();
        groups.add(home);
      }
      home.add(i);
    }
    groups.removeIf(g -> g.size() < 2);
    return groups;
  }

  /** Whether the scatter is more than what is stated can give by luck. */
  public boolean isWorseThanStated() {
    return chiSquared
        > new ChiSquaredDistribution(null, degreesOfFreedom).inverseCumulativeProbability(SURENESS);
  }

  /**
   * How much greater than stated the independent uncertainties must be to give such a scatter; 1
   * where it is not {@link #isWorseThanStated}.
   */
  double independentFactor() {
    return isWorseThanStated() ? Math.sqrt(chiSquared / degreesOfFreedom) : 1;
  }
}
