package sagwright.job;

import sagwright.sheet.JsonLine;
import sagwright.workshop.Run;

/** The answer of a run that is on the record. */
public final class RunAnswer {
  private RunAnswer() {}

  /**
   * The answer of docs/contract.md, section 4, with the run's number and what became of its lines.
   *
   * @param run that gave an answer
   */
  public static JsonLine of(Run run) {
    return JsonLine.parse(run.outcome().answer())
        .put("run", run.id())
        .put("line", LineJson.of(run.line()));
  }
}
