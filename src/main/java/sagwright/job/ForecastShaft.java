package sagwright.job;

import java.util.Objects;
import sagwright.finish.BlankWood;
import sagwright.grade.GradedForecast;
import sagwright.grade.Grader;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.modulus.Evaluation;
import sagwright.modulus.Evaluator;
import sagwright.modulus.ModulusAlong;
import sagwright.modulus.Shaft;
import sagwright.run.PoorRunException;
import sagwright.sheet.Sheet;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;

/** What a tested blank will be when it is finished to an order, and how it suits that order. */
public final class ForecastShaft {
  private final Evaluator evaluator;
  private final Grader grader;

  public ForecastShaft(SpeciesTable species, Sureness sureness) {
    this.evaluator = new Evaluator(species);
    this.grader = new Grader(sureness);
  }

  /**
   * An answer with the evaluation that it rests on.
   *
   * @param evaluation of the blank's run
   */
  public record Answer(Sheet sheet, Evaluation evaluation, GradedForecast graded) {}

  /**
   * @param sheet with a run
   * @throws PoorRunException where the run gives no modulus
   */
  public Answer of(Sheet sheet, Order order) throws PoorRunException {
    Answer answer = of(sheet, sheet.shaft(), order);
    GradedForecast graded = BowWarning.beside(answer.graded(), sheet.bowMm());
    return new Answer(sheet, answer.evaluation(), graded);
  }

  /**
   * The same for a shaft that was worked on since it was tested.
   *
   * @param sheet of the test; it gives the wood
   * @param now gives the shape and the mass
   */
  public Answer of(Sheet sheet, Shaft now, Order order) throws PoorRunException {
    Evaluation evaluation = evaluator.evaluate(sheet.bendTest());
    Estimate modulusMPa =
        new Estimate(evaluation.modulusMPa(), evaluation.modulusStdUncertaintyMPa());
    BlankWood wood =
        new BlankWood(
            now.taper(),
            now.massG(),
            ModulusAlong.constant(modulusMPa),
            sheet.ratio().value(),
            now.splice() != null);
    return new Answer(sheet, evaluation, grader.grade(wood, order));
  }

  /** The forecast of a blank that several runs were made on: its modulus is as they propose. */
  public GradedForecast of(SurveyShaft.Answer surveyed, Order order) {
    Double bowMm =
        surveyed.sheets().stream()
            .map(tested -> tested.sheet().bowMm())
            .filter(Objects::nonNull)
            .findFirst()
            .orElse(null);
    return BowWarning.beside(grader.grade(surveyed.wood(), order), bowMm);
  }

  /**
   * The forecast of a blank from all its runs that count.
   *
   * @param now its newest caliper entry: shape, mass and bow
   */
  public GradedForecast of(RunsTogether together, Sheet now, Order order) {
    return BowWarning.beside(grader.grade(together.wood(now.shaft()), order), now.bowMm());
  }
}
