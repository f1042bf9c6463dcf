package sagwright.bench;

import java.util.Set;
import sagwright.run.Samples;

/**
 * What a test on the bench has left.
 *
 * @param samples the readings that carry both load and gauge and may be used, load and deflection
 *     reckoned from the zero, time from the run's first reading; may be empty
 * @param line what became of the lines
 * @param ending how the run ended
 * @param cameOffPeak whether the load had come back off its peak by then
 * @param zero what load and deflection are reckoned from
 * @param greatestLoadN reckoned from the zero, single wild readings left out; 0 where none was put
 *     on
 * @param warnings all that were given while it ran
 */
public record RecordedRun(
    Samples samples,
    LineStatistics line,
    Ending ending,
    boolean cameOffPeak,
    RunZero zero,
    double greatestLoadN,
    Set<BenchWarning> warnings) {
  public RecordedRun {
    warnings = Set.copyOf(warnings);
  }

  /** Whether an answer is to be worked out; where not, the run is kept all the same. */
  public boolean allowsAnswer() {
    return ending.allowsAnswer(cameOffPeak);
  }
}
