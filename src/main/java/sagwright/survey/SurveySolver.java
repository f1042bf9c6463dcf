package sagwright.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.RealMatrix;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/**
 * Works a survey out (docs/contract.md, section 8). What is fitted are the moduli that the runs
 * showed one by one, weighted by what is independent between them; so the model {@code one} is
 * their weighted mean. Errors that are common to the runs are carried through the same fit and add
 * to the parameters' covariance. Which model is proposed: {@link ModelChoice}.
 *
 * <p>A model is left out where the runs cannot bear it: too few for Akaike's criterion, two
 * parameters that do the same to every run, or what {@link Bearing} says. The model {@code one} is
 * always given, without a criterion where there are two runs only.
 *
 * <p>Where repeats of one set-up scatter more than stated, the independent part of the
 * uncertainties (not the weights' ratio, nor χ²) is made as great as the scatter.
 */
public final class SurveySolver {
  /** Past this the runs are said to disagree: by luck once in a hundred surveys. */
  private static final double SURENESS = 0.99;

  public SurveyAnswer solve(SurveyProblem problem) {
    SurveyGround stated = SurveyGround.of(problem.runs());
    Repeatability repeatability = Repeatability.of(stated);
    double factor = repeatability == null ? 1 : repeatability.independentFactor();
    SurveyGround ground = stated.withIndependentTimes(factor);
    boolean spliced = problem.shaft().splice() != null;
    ModelChoice.Choice choice =
        spliced ? ModelChoice.onlyOne(ground) : new ModelChoice(ground).choose();

    List<SurveyModel> models = new ArrayList<>();
    SurveyModel proposed = null;
    for (ModelShape shape : choice.shapes()) {
      SurveyModel model = model(stated, ground, shape);
      models.add(model);
      proposed = shape.equals(choice.chosen().shape()) ? model : proposed;
    }
    List<Integer> standingOut = StandingOut.runs(ground, choice.chosen().shape());
    List<Warning> warnings = new ArrayList<>();
    standingOut.forEach(run -> warnings.add(new SurveyWarning.RunStandsOut(run)));
    if (spliced) {
      warnings.add(new SurveyWarning.SplicedShaft());
    } else if (models.size() == 1) {
      warnings.add(new SurveyWarning.OneModelOnly(ground.size()));
    }
    addWarnings(warnings, ground, choice, repeatability);
    return new SurveyAnswer(
        ground.size(), models, proposed, choice.reason(), standingOut, repeatability, warnings);
  }

  private static SurveyModel model(SurveyGround stated, SurveyGround ground, ModelShape shape) {
    int n = stated.size();
    FittedModel fitted = Bearing.borne(stated, shape);
    RealMatrix covariance = fitted.estimator().covariance(ground.covarianceMPa2(shape));
    double[] parameters = fitted.fit().parameters();
    boolean ratioFitted = shape.kind() == ModelKind.RATIO;
    int moduli = parameters.length - (ratioFitted ? 1 : 0);
    ModulusAlong along =
        along(
            stated,
            fitted,
            Arrays.copyOf(parameters, moduli),
            covariance.getSubMatrix(0, moduli - 1, 0, moduli - 1).getData());
    double[] residuals = fitted.fit().residualsMPa();
    double[] standardised = new double[n];
    for (int i = 0; i < n; i++) {
      standardised[i] = residuals[i] / stated.independentMPa()[i];
    }
    double chiSquared = fitted.fit().chiSquared();
    return new SurveyModel(
        shape.kind(),
        along,
        ratioFitted
            ? new Estimate(parameters[moduli], Math.sqrt(covariance.getEntry(moduli, moduli)))
            : null,
        chiSquared,
        shape.parameters(),
        shape.hasAicc(n) ? shape.aicc(chiSquared, n) : null,
        residuals,
        standardised);
  }

  private static ModulusAlong along(
      SurveyGround ground, FittedModel fitted, double[] moduliMPa, double[][] covarianceMPa2) {
    double lengthMm = ground.runs().get(0).taper().lengthMm();
    return fitted.shape().kind() == ModelKind.STRAIGHT
        ? ModulusAlong.straight(new double[] {0, lengthMm}, moduliMPa, covarianceMPa2)
        : ModulusAlong.pieces(fitted.bordersMm(), moduliMPa, covarianceMPa2);
  }

  private static void addWarnings(
      List<Warning> warnings,
      SurveyGround ground,
      ModelChoice.Choice choice,
      Repeatability repeatability) {
    int freedom = ground.size() - choice.chosen().shape().parameters();
    if (freedom > 0
        && choice.chosen().chiSquared()
            > new ChiSquaredDistribution(null, freedom).inverseCumulativeProbability(SURENESS)) {
      warnings.add(new SurveyWarning.RunsDisagree(choice.chosen().chiSquared(), freedom));
    }
    if (repeatability != null && repeatability.isWorseThanStated()) {
      warnings.add(
          new SurveyWarning.PoorRepeats(
              repeatability.standardDeviationMPa(), repeatability.statedMPa()));
    }
    double least = ground.runs().stream().mapToDouble(RunObservation::ratio).min().orElseThrow();
    double most = ground.runs().stream().mapToDouble(RunObservation::ratio).max().orElseThrow();
    if (least != most) {
      warnings.add(new SurveyWarning.RatiosDiffer(least, most));
    }
    if (choice.chosen().shape().kind() == ModelKind.PIECES) {
      addNotHeard(warnings, ground);
    }
  }

  /** Wood this short beyond the outermost supports is not worth a word. */
  private static final double OVERHANG_WORTH_A_WORD = 0.1;

  private static void addNotHeard(List<Warning> warnings, SurveyGround ground) {
    double length = ground.runs().get(0).taper().lengthMm();
    double from =
        ground.runs().stream().mapToDouble(r -> r.setUp().supportAMm()).min().orElseThrow();
    double to = ground.runs().stream().mapToDouble(r -> r.setUp().supportBMm()).max().orElseThrow();
    if (from > OVERHANG_WORTH_A_WORD * length) {
      warnings.add(new SurveyWarning.NotHeard(0, from));
    }
    if (length - to > OVERHANG_WORTH_A_WORD * length) {
      warnings.add(new SurveyWarning.NotHeard(to, length));
    }
  }
}
