package sagwright.screen.bench;

import java.util.List;
import sagwright.job.TestedRun;
import sagwright.quantity.Figures;

/** How the runs at different turns agree, in one line. */
final class TurnWords {
  private TurnWords() {}

  static String of(List<TestedRun> runs) {
    if (runs.size() < 2) {
      return "";
    }
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (TestedRun run : runs) {
      double stiffness = run.evaluation().shaftStiffnessNPerMm();
      least = Math.min(least, stiffness);
      most = Math.max(most, stiffness);
    }
    return "all agree within " + Figures.rounded(100 * (most - least) / least, 1) + " %";
  }
}
