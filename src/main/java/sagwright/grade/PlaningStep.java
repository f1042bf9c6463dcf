package sagwright.grade;

import java.util.Optional;
import sagwright.beam.Station;
import sagwright.finish.BlankWood;
import sagwright.finish.FinishCheck;
import sagwright.finish.FinishPlan;
import sagwright.finish.Forecast;
import sagwright.finish.PlanForecaster;

/**
 * What a shaft comes to that is planed a little thicker or thinner than its plan, everywhere alike
 * and from the same place of its blank.
 *
 * @param thickerByMm of the diameter; below 0 for more wood planed away
 * @param planned to the plan
 * @param graded so much thicker, without the first bending frequency
 */
public record PlaningStep(double thickerByMm, GradedForecast planned, GradedForecast graded) {
  /** A step that a maker can see on the calipers and take with a plane. */
  public static final double USUAL_MM = 0.1;

  /**
   * @param planned of this blank
   * @return empty where the plan cannot be planed so: the ferrule's bore or a weight would come
   *     through
   */
  public static Optional<PlaningStep> of(
      Grader grader, BlankWood blank, GradedForecast planned, double thickerByMm) {
    Order order = planned.order();
    FinishPlan plan = order.finish();
    boolean leavesWood =
        plan.taper().stations().stream().mapToDouble(Station::depthMm).min().orElse(0) + thickerByMm
            > 0;
    if (!leavesWood) {
      return Optional.empty();
    }
    FinishPlan other = plan.thickerBy(thickerByMm).cutFrom(planned.forecast().cut().fromMm());
    if (!FinishCheck.problemsOf(other).isEmpty()) {
      return Optional.empty();
    }
    Order planedSo = order.finishedTo(other);
    PlanForecaster forecaster = Grader.forecaster(planedSo);
    Forecast forecast = forecaster.withoutFrequency(blank);
    return Optional.of(new PlaningStep(thickerByMm, planned, grader.grade(planedSo, forecast)));
  }

  /** By how much the foremost stiffness changes, in N/mm. */
  public double stiffnessChangeNPerMm() {
    return graded.grade().stiffnessNPerMm().value() - planned.grade().stiffnessNPerMm().value();
  }

  /** By how much the mass changes, in g; null where the blank was not weighed. */
  public Double massChangeG() {
    Double mass = graded.forecast().massG();
    return mass == null ? null : mass - planned.forecast().massG();
  }
}
