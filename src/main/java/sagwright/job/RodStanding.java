package sagwright.job;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import sagwright.check.ChartBaseline;
import sagwright.check.ChartVerdict;
import sagwright.check.ControlChart;
import sagwright.uncertainty.Estimate;

/**
 * How the bench stands by its check rod. The chart starts anew with every calibration and with
 * every rod; until it has readings enough for limits, the rod's own steel is the judge.
 *
 * @param rod null where there is none yet
 * @param readings all that count, oldest first
 * @param from the reading with which the chart begins; the size where none has come since
 * @param chart of the readings from there on, in percent off what the steel says; null with too few
 */
public record RodStanding(
    CheckRods.Kept rod, List<RodReading> readings, int from, ControlChart chart) {
  /** So many readings make the limits, where there are so many (common practice, no source). */
  private static final int BASELINE_READINGS = 10;

  public RodStanding {
    readings = List.copyOf(readings);
  }

  public static final RodStanding NO_ROD = new RodStanding(null, List.of(), 0, null);

  /**
   * @param since when the calibration in force was put there; null where there is none
   */
  static RodStanding of(CheckRods.Kept rod, List<RodReading> readings, Instant since) {
    Instant begins = since == null || since.isBefore(rod.since()) ? rod.since() : since;
    int from = (int) readings.stream().filter(r -> r.at().isBefore(begins)).count();
    List<RodReading> charted = readings.subList(from, readings.size());
    return new RodStanding(rod, readings, from, chart(charted));
  }

  private static ControlChart chart(List<RodReading> charted) {
    if (charted.size() < ChartBaseline.LEAST_READINGS) {
      return null;
    }
    double[] percent = charted.stream().mapToDouble(RodReading::differencePercent).toArray();
    double noise =
        charted.stream()
            .mapToDouble(RodReading::noisePercent)
            .filter(Double::isFinite)
            .average()
            .orElse(0);
    int first = Math.min(BASELINE_READINGS, percent.length);
    ChartBaseline baseline = ChartBaseline.of(Arrays.copyOf(percent, first), noise);
    return ControlChart.of(baseline, percent);
  }

  public boolean hasRod() {
    return rod != null;
  }

  /** Whether it was read since the chart began. */
  public boolean wasSeen() {
    return from < readings.size();
  }

  /** The newest reading; only where there is one. */
  public RodReading newest() {
    return readings.get(readings.size() - 1);
  }

  /** Null where there are too few readings for a verdict of the chart. */
  private ChartVerdict verdict() {
    return chart == null ? null : chart.verdict();
  }

  public boolean isOut() {
    return wasSeen() && (chart == null ? !agreesWithSteel() : !verdict().isIn());
  }

  private boolean agreesWithSteel() {
    Estimate shown = newest().shownMPa();
    Estimate steel = rod.rod().modulusMPa();
    double u = Math.hypot(shown.standardUncertainty(), steel.standardUncertainty());
    return Math.abs(shown.value() - steel.value()) <= Estimate.COVERAGE_FACTOR_95 * u;
  }

  /** In or out, in words. */
  public String inWords() {
    if (!hasRod()) {
      return "no check rod yet";
    }
    if (!wasSeen()) {
      return readings.isEmpty() ? "not seen yet" : "not seen since the chart began anew";
    }
    if (chart != null) {
      return verdict().inWords();
    }
    return isOut()
        ? String.format(
            Locale.ROOT, "out: %.1f %% off what its steel says", newest().differencePercent())
        : "in so far: "
            + (readings.size() - from)
            + " of "
            + ChartBaseline.LEAST_READINGS
            + " readings towards limits of its own";
  }

  /** What to do or to look at next. */
  public String lookAt() {
    if (!hasRod()) {
      return "enter a ground steel rod of known diameter: it proves the bench every morning";
    }
    if (!wasSeen()) {
      return ChartVerdict.NOTHING_YET.lookAt();
    }
    if (chart != null) {
      return verdict().lookAt();
    }
    return isOut()
        ? "measure the rod and the places of supports, load and gauge; then calibrate"
        : "test it every morning, before the first shaft";
  }
}
