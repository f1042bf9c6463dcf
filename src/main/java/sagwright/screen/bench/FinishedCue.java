package sagwright.screen.bench;

import sagwright.job.GradeChange;
import sagwright.job.PlannedFinish;

/**
 * What the blank on the bench will be for the order it is tried for.
 *
 * @param change how its grade differs from the one before it, null for none
 */
public record FinishedCue(PlannedFinish planned, GradeChange change) {}
