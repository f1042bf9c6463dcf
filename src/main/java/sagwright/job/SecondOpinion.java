package sagwright.job;

import sagwright.modulus.MonteCarlo;
import sagwright.uncertainty.AdaptiveMonteCarlo;
import sagwright.uncertainty.BudgetCheck;
import sagwright.uncertainty.Estimate;

/**
 * A run's modulus by random draws, held against its budget: JCGM 101, 7.9 and 8.
 *
 * @param draws until they had settled
 */
public record SecondOpinion(AdaptiveMonteCarlo draws, BudgetCheck check) {
  /** Fixed, so that one run always hears the same opinion. */
  private static final long SEED = 101;

  static SecondOpinion of(TestedRun run) {
    Estimate byBudget =
        new Estimate(run.evaluation().modulusMPa(), run.evaluation().modulusStdUncertaintyMPa());
    AdaptiveMonteCarlo draws =
        MonteCarlo.settled(run.sheet().bendTest(), run.evaluation().fit(), SEED);
    return new SecondOpinion(draws, BudgetCheck.of(byBudget, draws.interval95()));
  }
}
