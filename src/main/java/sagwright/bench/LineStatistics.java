package sagwright.bench;

/**
 * What became of the lines of a run.
 *
 * @param readings good readings, whether they carried load and gauge or not
 * @param refused lines that were counted and not used
 * @param gaps places where readings did not come
 * @param missing how many readings did not come, by the head's own count
 */
public record LineStatistics(long readings, long refused, long gaps, long missing) {
  public static final LineStatistics NONE = new LineStatistics(0, 0, 0, 0);

  LineStatistics plusReading() {
    return new LineStatistics(readings + 1, refused, gaps, missing);
  }

  LineStatistics plusRefused() {
    return new LineStatistics(readings, refused + 1, gaps, missing);
  }

  LineStatistics plusGap(int missed) {
    return new LineStatistics(readings, refused, gaps + 1, missing + missed);
  }
}
