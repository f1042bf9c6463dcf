package sagwright.screen.bench;

import sagwright.job.LaidBlank;
import sagwright.job.RunsTogether;
import sagwright.job.SecondOpinion;
import sagwright.job.TestedRun;
import sagwright.job.TriedOrder;

/**
 * What the bench is about between two readings: immutable, made on the work thread, combined with
 * the head's newest snapshot into a {@link BenchView}.
 *
 * @param laid null for nothing
 * @param tried null for no order
 * @param phase where the last test stands while none runs
 * @param detail the line under the instruction; empty for the phase's own
 * @param isTesting whether a test runs
 * @param shown the run that the plot and the answer are about, null for none
 * @param together what it and its likes show, null for none
 * @param opinion the second one on the run shown, null where none was asked for
 * @param finished what it makes for the order tried for, null for none
 * @param question null for none
 */
record BenchState(
    LaidBlank laid,
    TriedOrder tried,
    Phase phase,
    String detail,
    boolean isTesting,
    TestedRun shown,
    RunsTogether together,
    SecondOpinion opinion,
    FinishedCue finished,
    BenchView.Question question) {
  static final BenchState EMPTY =
      new BenchState(null, null, Phase.NO_BLANK, "", false, null, null, null, null, null);

  /**
   * @param runs what its runs show together, null for none
   */
  BenchState withLaid(LaidBlank next, RunsTogether runs) {
    return new BenchState(
        next,
        tried,
        Phase.READY,
        "",
        false,
        runs == null ? null : runs.newest(),
        runs,
        null,
        null,
        null);
  }

  /** The same blank, its record read anew. */
  BenchState withRecord(LaidBlank next, RunsTogether runs) {
    return new BenchState(
        next, tried, phase, detail, isTesting, shown, runs, opinion, finished, question);
  }

  BenchState withTried(TriedOrder next) {
    return new BenchState(
        laid, next, phase, detail, isTesting, shown, together, opinion, null, question);
  }

  BenchState withFinished(FinishedCue next) {
    return new BenchState(
        laid, tried, phase, detail, isTesting, shown, together, opinion, next, question);
  }

  BenchState withPhase(Phase next, String why) {
    return new BenchState(
        laid, tried, next, why, false, shown, together, opinion, finished, question);
  }

  BenchState testing() {
    return new BenchState(
        laid, tried, Phase.HOLD_STILL, "", true, shown, together, opinion, finished, null);
  }

  BenchState withShown(TestedRun run) {
    return new BenchState(laid, tried, Phase.DONE, "", false, run, together, null, null, question);
  }

  BenchState withOpinion(SecondOpinion next) {
    return new BenchState(
        laid, tried, phase, detail, isTesting, shown, together, next, finished, question);
  }

  BenchState asking(BenchView.Question next) {
    return new BenchState(
        laid, tried, phase, detail, isTesting, shown, together, opinion, finished, next);
  }
}
