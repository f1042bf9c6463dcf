package sagwright.check;

/**
 * What a steady bench shows of its check rod: centre and standard deviation from reading to
 * reading.
 */
public record ChartBaseline(double centre, double sigma) {
  /** Mean range of two normal values over their standard deviation, d₂ of the charts' tables. */
  private static final double MEAN_RANGE_OF_TWO = 1.128;

  /** With fewer, the moving range says too little of the scatter (common practice, no source). */
  public static final int LEAST_READINGS = 5;

  /**
   * From readings of a bench taken as steady: their mean, and their mean moving range over 1.128
   * (NIST/SEMATECH e-Handbook, 6.3.2.2).
   *
   * @param readings in the order of time, {@link #LEAST_READINGS} or more
   * @param leastSigma what the scatter is not taken to lie under: the readings' own standard
   *     uncertainty, so that a few lucky days set no limits that nobody can keep
   */
  public static ChartBaseline of(double[] readings, double leastSigma) {
    if (readings.length < LEAST_READINGS) {
      throw new IllegalArgumentException(
          "a baseline wants " + LEAST_READINGS + " readings, here are " + readings.length);
    }
    double sum = readings[0];
    double ranges = 0;
    for (int i = 1; i < readings.length; i++) {
      sum += readings[i];
      ranges += Math.abs(readings[i] - readings[i - 1]);
    }
    double sigma = ranges / (readings.length - 1) / MEAN_RANGE_OF_TWO;
    return new ChartBaseline(sum / readings.length, Math.max(sigma, leastSigma));
  }
}
