package sagwright.screen.bench;

import sagwright.bench.BenchSnapshot;
import sagwright.bench.BenchWarning;
import sagwright.bench.LinkState;
import sagwright.bench.TestSnapshot;
import sagwright.job.LaidBlank;
import sagwright.quantity.Figures;
import sagwright.run.StiffnessFit;

/** Where the test stands and what the head shows, in words and figures. */
final class StageViews {
  private StageViews() {}

  /**
   * @param test null while none runs
   */
  static Phase phase(BenchState state, BenchSnapshot snapshot, TestSnapshot test) {
    if (state.laid() == null) {
      return Phase.NO_BLANK;
    }
    if (state.isTesting()) {
      return test == null ? Phase.HOLD_STILL : phase(test);
    }
    boolean isThere = snapshot.link() == LinkState.READING;
    boolean waits = state.phase() == Phase.READY || state.phase() == Phase.TURN;
    return !isThere && waits ? Phase.NO_HEAD : state.phase();
  }

  private static Phase phase(TestSnapshot test) {
    boolean tooMuch =
        test.warnings().contains(BenchWarning.NEAR_SAFE_LOAD)
            || test.warnings().contains(BenchWarning.OVER_SAFE_LOAD);
    if (tooMuch) {
      return Phase.TOO_MUCH;
    }
    return switch (test.instruction()) {
      case HOLD_STILL -> Phase.HOLD_STILL;
      case LOAD_SLOWLY -> Phase.LOAD_SLOWLY;
      case LET_OFF -> Phase.LET_OFF;
      case DONE -> Phase.DONE;
    };
  }

  static String detail(Phase phase, BenchState state, BenchSnapshot snapshot) {
    if (phase == Phase.NO_HEAD) {
      return snapshot.linkInWords();
    }
    if (phase == Phase.LOAD_SLOWLY) {
      return "to " + Figures.rounded(state.laid().limits().targetN(), 0) + " N, then let off";
    }
    if (phase == Phase.DONE && state.detail().isEmpty()) {
      return "the greatest of this run";
    }
    return state.isTesting() ? "" : state.detail();
  }

  /** While a test runs what the head shows, afterwards the greatest of the run that is shown. */
  static BenchView.HeadReading reading(BenchState state, TestSnapshot test) {
    if (test != null) {
      return reading(state.laid(), test);
    }
    if (state.phase() != Phase.DONE || state.shown() == null) {
      return BenchView.HeadReading.NONE;
    }
    StiffnessFit fit = state.shown().evaluation().fit();
    return new BenchView.HeadReading(
        fit.greatestLoadN(), fit.greatestLoadN() / fit.stiffnessNPerMm(), 0);
  }

  private static BenchView.HeadReading reading(LaidBlank laid, TestSnapshot test) {
    double frame = laid.setUp().frameComplianceMmPerN();
    return new BenchView.HeadReading(
        test.loadN(), test.deflectionMm(), test.deflectionMm() - frame * test.loadN());
  }
}
