package sagwright.workshop;

/**
 * What of a run that counts is needed to choose among thousands of blanks.
 *
 * @param evaluationId of its newest answer
 * @param modulusMPa of that answer, as the next
 * @param ratio r = E/G as the run's sheet has it; null where it names none
 * @param species as the run's sheet has it; null where it names none, or names a ratio
 * @param assumed of the answer, a JSON array
 * @param warnings of the answer, a JSON array
 * @param startedMs when it was started, since 1970
 */
public record ShortRun(
    long runId,
    long evaluationId,
    double modulusMPa,
    double modulusStdUncertaintyMPa,
    Double ratio,
    String species,
    String assumed,
    String warnings,
    long startedMs) {}
