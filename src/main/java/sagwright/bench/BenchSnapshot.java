package sagwright.bench;

/**
 * The bench as it stands: immutable, for any thread.
 *
 * @param linkInWords one line for people: how the line stands, and what to do where it does not
 * @param identity who the head says it is; null for one that has not said
 * @param newest the newest reading; null before the first
 * @param readingsPerSecond over the last second or so
 * @param line what became of all lines since the line was opened
 * @param lastRefused the newest line that was refused and why, to be shown; null before the first
 * @param test the test that runs, or the last one as it ended; null before the first
 */
public record BenchSnapshot(
    LinkState link,
    String linkInWords,
    HeadIdentity identity,
    Reading newest,
    double readingsPerSecond,
    LineStatistics line,
    String lastRefused,
    TestSnapshot test) {
  static BenchSnapshot before(String description) {
    return new BenchSnapshot(
        LinkState.OPENING,
        "opening " + description,
        null,
        null,
        0,
        LineStatistics.NONE,
        null,
        null);
  }
}
