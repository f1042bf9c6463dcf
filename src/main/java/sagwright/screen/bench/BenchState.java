package sagwright.screen.bench;

import sagwright.grade.GradedForecast;
import sagwright.job.LaidBlank;
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
 * @param graded what it makes for the order tried for, null for none
 * @param question null for none
 */
record BenchState(
    LaidBlank laid,
    TriedOrder tried,
    Phase phase,
    String detail,
    boolean isTesting,
    TestedRun shown,
    GradedForecast graded,
    BenchView.Question question) {
  static final BenchState EMPTY =
      new BenchState(null, null, Phase.NO_BLANK, "", false, null, null, null);

  BenchState withLaid(LaidBlank next) {
    return new BenchState(
        next, tried, Phase.READY, "", false, next.latest().orElse(null), null, null);
  }

  /** The same blank, its record read anew. */
  BenchState withRecord(LaidBlank next) {
    return new BenchState(next, tried, phase, detail, isTesting, shown, graded, question);
  }

  BenchState withTried(TriedOrder next) {
    return new BenchState(laid, next, phase, detail, isTesting, shown, null, question);
  }

  BenchState withGraded(GradedForecast next) {
    return new BenchState(laid, tried, phase, detail, isTesting, shown, next, question);
  }

  BenchState withPhase(Phase next, String why) {
    return new BenchState(laid, tried, next, why, false, shown, graded, question);
  }

  BenchState testing() {
    return new BenchState(laid, tried, Phase.HOLD_STILL, "", true, shown, graded, null);
  }

  BenchState withShown(TestedRun run) {
    return new BenchState(laid, tried, Phase.DONE, "", false, run, null, question);
  }

  BenchState asking(BenchView.Question next) {
    return new BenchState(laid, tried, phase, detail, isTesting, shown, graded, next);
  }
}
