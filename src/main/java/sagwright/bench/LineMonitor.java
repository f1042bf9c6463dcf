package sagwright.bench;

/** What is known of one open line: its newest reading, its counts, who answers. One thread. */
final class LineMonitor implements WireListener {
  private static final long RATE_EVERY_NANOS = 1_000_000_000L;

  private LineStatistics line = LineStatistics.NONE;
  private HeadIdentity identity;
  private Reading newest;
  private String lastRefused;
  private boolean hasRate;
  private long rateFromNanos;
  private long readingsThen;
  private double readingsPerSecond;

  @Override
  public void reading(Reading reading, long micros) {
    line = line.plusReading();
    newest = reading;
  }

  @Override
  public void gap(int missing) {
    line = line.plusGap(missing);
  }

  @Override
  public void refused(Refusal why, String text) {
    line = line.plusRefused();
    lastRefused = "«" + text + "»: " + why.inWords();
  }

  @Override
  public void answered(HeadAnswer answer) {
    answer.identity().ifPresent(i -> identity = i);
  }

  /** To be called often: keeps the rate. */
  void tick(long nanos) {
    long passed = nanos - rateFromNanos;
    if (hasRate && passed < RATE_EVERY_NANOS) {
      return;
    }
    readingsPerSecond = hasRate ? (line.readings() - readingsThen) * 1e9 / passed : 0;
    rateFromNanos = nanos;
    readingsThen = line.readings();
    hasRate = true;
  }

  HeadIdentity identity() {
    return identity;
  }

  LineStatistics line() {
    return line;
  }

  BenchSnapshot snapshot(LinkState link, String inWords, TestSnapshot test) {
    return new BenchSnapshot(
        link, inWords, identity, newest, readingsPerSecond, line, lastRefused, test);
  }
}
