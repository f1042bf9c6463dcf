package sagwright.check;

/**
 * The check rod's chart: individual readings against three standard deviations, and an
 * exponentially weighted moving average of them that finds a creep which no single reading shows
 * (NIST/SEMATECH e-Handbook, 6.3.2.2 and 6.3.2.4).
 *
 * @param readings in the order of time
 * @param average the EWMA after each reading
 * @param individualLimits for single readings
 * @param averageLimits for the EWMA, as it has them after many readings
 * @param driftBegan the reading with which the present creep began; −1 where the EWMA is in
 */
public record ControlChart(
    double[] readings,
    double[] average,
    ControlLimits individualLimits,
    ControlLimits averageLimits,
    int driftBegan) {
  /** λ: the weight of the newest reading. */
  public static final double WEIGHT = 0.3;

  private static final double LIMIT_SIGMAS = 3;

  public static ControlChart of(ChartBaseline baseline, double[] readings) {
    double[] average = new double[readings.length];
    double last = baseline.centre();
    for (int i = 0; i < readings.length; i++) {
      last = WEIGHT * readings[i] + (1 - WEIGHT) * last;
      average[i] = last;
    }
    double halfWidth = LIMIT_SIGMAS * baseline.sigma();
    ControlLimits averageLimits =
        ControlLimits.about(baseline.centre(), halfWidth * Math.sqrt(WEIGHT / (2 - WEIGHT)));
    boolean drifts = readings.length > 0 && !averageLimits.holds(last);
    return new ControlChart(
        readings.clone(),
        average,
        ControlLimits.about(baseline.centre(), halfWidth),
        averageLimits,
        drifts ? Cusum.of(readings, Cusum.Rule.of(baseline)).climbBegan() : -1);
  }

  /** How the newest reading stands. */
  public ChartVerdict verdict() {
    if (readings.length == 0) {
      return ChartVerdict.NOTHING_YET;
    }
    return verdictAt(readings.length - 1);
  }

  /** How a reading stood when it was taken. */
  public ChartVerdict verdictAt(int reading) {
    double ewma = average[reading];
    double value = readings[reading];
    if (!averageLimits.holds(ewma)) {
      return ewma > averageLimits.upper() ? ChartVerdict.CREPT_UP : ChartVerdict.CREPT_DOWN;
    }
    if (!individualLimits.holds(value)) {
      return value > individualLimits.upper() ? ChartVerdict.ONCE_ABOVE : ChartVerdict.ONCE_BELOW;
    }
    return ChartVerdict.IN;
  }
}
