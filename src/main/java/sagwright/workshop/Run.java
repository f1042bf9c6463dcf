package sagwright.workshop;

import sagwright.bench.LineStatistics;

/**
 * A run that is closed, as it stands on its blank's record now.
 *
 * @param startedAt ISO 8601; as its sheet has it, else when it was entered
 * @param ending how it ended, in words
 * @param line what became of the lines; all 0 where there was no line
 * @param outcome its newest answer, or why there is none
 * @param setAsideWhy null for a run that is kept
 * @param moved null for a run that lies where it was recorded
 */
public record Run(
    long id,
    String startedAt,
    RunOrigin origin,
    String ending,
    LineStatistics line,
    RunOutcome outcome,
    String setAsideWhy,
    Moved moved) {
  /** Where a run lay before, and why it was moved. */
  public record Moved(String fromTag, String why) {}

  public boolean isSetAside() {
    return setAsideWhy != null;
  }

  /** Whether it counts for rank, grade and export: it is not set aside and gave an answer. */
  public boolean counts() {
    return !isSetAside() && outcome.answer() != null;
  }
}
