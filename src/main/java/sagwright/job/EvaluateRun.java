package sagwright.job;

import java.util.List;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.Sheet;
import sagwright.uncertainty.Warning;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.RunOutcome;

/** What a run gives, as it goes on a blank's record: an answer, or why there is none. */
public final class EvaluateRun {
  private final Evaluator evaluator;

  public EvaluateRun(SpeciesTable species) {
    this.evaluator = new Evaluator(species);
  }

  /**
   * @param sheet with a run
   * @param ofBench what the bench found amiss while the run was recorded
   */
  public RunOutcome of(Sheet sheet, List<Warning> ofBench) {
    try {
      return RunOutcome.answered(
          AnswerWriter.evaluation(sheet, evaluator.evaluate(sheet.bendTest()), ofBench));
    } catch (PoorRunException poor) {
      return RunOutcome.without(poor.getMessage());
    }
  }
}
