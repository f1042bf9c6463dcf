package sagwright.survey;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import sagwright.uncertainty.Estimate;

/** A series' moduli as one mean, and as a mean with a change by the turn. */
final class TurnFit {
  private final SurveyGround ground;
  private final RealMatrix covariance;
  private final double[] moduliMPa;
  private final Part mean;
  private final Part turned;
  private final TurnEffect grain;
  private final TurnEffect stiffness;

  /**
   * A straight least-squares fit: parameters, how they follow the runs, χ² by all that is known.
   */
  private record Part(double[] parameters, Estimator estimator, double[] residuals, double chi) {
    int degreesOfFreedom() {
      return residuals.length - parameters.length;
    }
  }

  private TurnFit(SurveyGround ground, double[] turnDegrees) {
    this.ground = ground;
    this.covariance = ground.covarianceMPa2(ModelShape.ONE);
    this.moduliMPa = ground.runs().stream().mapToDouble(RunObservation::modulusMPa).toArray();
    RealMatrix columns = Swing.columns(turnDegrees, 2);
    this.mean = part(columns.getSubMatrix(0, moduliMPa.length - 1, 0, 0), moduliMPa);
    this.turned = part(columns, moduliMPa);
    this.grain = turned == null ? null : effect(turned, covariance);
    this.stiffness = turned == null ? null : stiffnessEffect(columns);
  }

  static TurnFit of(SurveyGround ground, double[] turnDegrees) {
    return new TurnFit(ground, turnDegrees);
  }

  /** Null where the columns cannot be told apart. */
  private Part part(RealMatrix columns, double[] values) {
    Estimator estimator = Estimator.of(columns, ground.independentWeights());
    if (estimator == null) {
      return null;
    }
    double[] parameters = estimator.byShown().operate(values);
    double[] residuals =
        new ArrayRealVector(values)
            .subtract(new ArrayRealVector(columns.operate(parameters)))
            .toArray();
    double chi = 0;
    for (double w : ground.fullWeights(ModelShape.ONE).weigh(residuals)) {
      chi += w * w;
    }
    return new Part(parameters, estimator, residuals, chi);
  }

  private static TurnEffect effect(Part part, RealMatrix covariance) {
    double mean = part.parameters()[0];
    RealMatrix ofParameters = part.estimator().covariance(covariance);
    return TurnEffect.of(
        part.parameters()[1] / mean,
        part.parameters()[2] / mean,
        ofParameters.getSubMatrix(1, 2, 1, 2).scalarMultiply(1 / (mean * mean)));
  }

  /** The shaft's stiffness is measured, so that caliper errors play no part in its change. */
  private TurnEffect stiffnessEffect(RealMatrix columns) {
    double[] relative = new double[moduliMPa.length];
    for (int i = 0; i < relative.length; i++) {
      RunObservation run = ground.runs().get(i);
      relative[i] = moduliMPa[i] / run.evenFlexibilityPerMm();
    }
    double scale = mean.parameters()[0] / new ArrayRealVector(relative).getL1Norm();
    for (int i = 0; i < relative.length; i++) {
      relative[i] *= scale * relative.length;
    }
    return effect(part(columns, relative), ground.independentCovarianceMPa2());
  }

  boolean hasGrain() {
    return grain != null && grain.isSignificant();
  }

  /** Whether a change by the turn is seen that leaves no more scatter than is stated. */
  boolean grainExplains(double sureness) {
    return hasGrain() && fits(turned, sureness);
  }

  boolean meanFits(double sureness) {
    return fits(mean, sureness);
  }

  private static boolean fits(Part part, double sureness) {
    int freedom = part.degreesOfFreedom();
    return freedom == 0
        || part.chi()
            <= new ChiSquaredDistribution(null, freedom).inverseCumulativeProbability(sureness);
  }

  private Part used() {
    return hasGrain() ? turned : mean;
  }

  int degreesOfFreedom() {
    return used().degreesOfFreedom();
  }

  double standardDeviationMPa() {
    double squares = 0;
    for (double r : used().residuals()) {
      squares += r * r;
    }
    return Math.sqrt(squares / degreesOfFreedom());
  }

  boolean worseThanStated(double sureness) {
    return !fits(used(), sureness);
  }

  double meanMPa() {
    return used().parameters()[0];
  }

  /**
   * The series' modulus: the independent part made as great as the scatter where that is worse than
   * stated.
   */
  Estimate modulusMPa(double sureness) {
    RealMatrix total = covariance;
    if (worseThanStated(sureness)) {
      double factor = used().chi() / degreesOfFreedom();
      RealMatrix own = ground.independentCovarianceMPa2();
      total = covariance.add(own.scalarMultiply(factor - 1));
    }
    double variance = used().estimator().covariance(total).getEntry(0, 0);
    return new Estimate(meanMPa(), Math.sqrt(variance));
  }

  TurnEffect grain() {
    return grain;
  }

  TurnEffect stiffness() {
    return stiffness;
  }
}
