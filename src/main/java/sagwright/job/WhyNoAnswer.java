package sagwright.job;

import java.util.List;
import java.util.stream.Collectors;
import sagwright.bench.RecordedRun;
import sagwright.uncertainty.Warning;

/**
 * Why a recorded run gave no answer, with what the bench found amiss: it mostly is the cause, and
 * says what to look at.
 */
final class WhyNoAnswer {
  private WhyNoAnswer() {}

  /**
   * @param why as the run itself says
   * @param found what the bench found amiss
   */
  static String inWords(String why, RecordedRun recorded, List<? extends Warning> found) {
    String cause = found.stream().map(Warning::inWords).collect(Collectors.joining("; "));
    if (recorded.line().readings() == 0) {
      cause =
          recorded.line().refused() == 0
              ? "no reading came: is the bench head powered, and is this its port?"
              : "what came is no bench head's, or the port's speed is not the one that was set";
    } else if (cause.isEmpty() && !recorded.allowsAnswer() && recorded.greatestLoadN() == 0) {
      cause = "the load never left its rest";
    }
    return cause.isEmpty() ? why : why + " (" + cause + ")";
  }
}
