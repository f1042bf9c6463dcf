package sagwright.screen.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.bench.HealthReport;
import sagwright.bench.LineStatistics;
import sagwright.bench.MainsHum;
import sagwright.quantity.Figures;

/** How the line to the head does, in words: what each figure is, and where to look. */
final class HealthWords {
  /** A good cell shows less, a usual one twice that (from memory). */
  private static final double QUIET_N = 0.012;

  private static final double QUIET_MM = 0.004;

  /** A quarter of an hour after it was switched on a cell drifts less (from memory). */
  private static final double STEADY_N_A_MINUTE = 0.02;

  private HealthWords() {}

  /**
   * A figure.
   *
   * @param words what it means, and what to look at where it is amiss
   */
  record Row(String name, String figure, boolean isAmiss, String words) {}

  static String heading(ChecksView.Health health) {
    if (health.report() == null) {
      return "Line: no reading yet";
    }
    long amiss = rows(health).stream().filter(Row::isAmiss).count();
    return amiss == 0 ? "Line: all is well" : "Line: " + amiss + " to look at, in bold";
  }

  static List<Row> rows(ChecksView.Health health) {
    HealthReport report = health.report();
    if (report == null) {
      String words = health.line().isEmpty() ? "plug the bench head in" : health.line();
      return List.of(new Row("bench head", words, false, "choose its port under Settings, F9"));
    }
    LineStatistics line = report.line();
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row(
            "readings",
            Figures.rounded(report.readingsPerSecond(), 1)
                + " a second, gauge "
                + Figures.rounded(report.gaugePerSecond(), 1),
            false,
            "by the head's own clock; the gauge may be slower than the load"));
    rows.add(
        new Row(
            "lost",
            line.missing() == 0 ? "none" : line.missing() + " in " + line.gaps() + " gaps",
            line.missing() > 0,
            "a gap: the head was busier than its line; set more baud or fewer readings"));
    rows.add(
        new Row(
            "refused lines",
            line.refused() == 0
                ? "none"
                : line.refused() + ", " + report.checkSumFailures() + " by check sum",
            line.refused() > 0,
            "check sums fail where a cable is long, loose or beside a motor"
                + (health.lastRefused() == null ? "" : "; the last: " + health.lastRefused())));
    noise(rows, report, health.inCounts());
    rows.add(hum(report, health.inCounts()));
    return rows;
  }

  private static void noise(List<Row> rows, HealthReport report, boolean inCounts) {
    String load = inCounts ? "counts" : "N";
    rows.add(
        new Row(
            "load at rest",
            figure(report.loadNoiseN(), inCounts) + " " + load,
            !inCounts && report.loadNoiseN() > QUIET_N,
            "noise from reading to reading with nothing on; 0.005 to 0.010 N is usual"));
    rows.add(
        new Row(
            "gauge at rest",
            figure(report.gaugeNoiseMm(), inCounts) + (inCounts ? " steps" : " mm"),
            !inCounts && report.gaugeNoiseMm() > QUIET_MM,
            "more than a few steps: the stem or its bar is loose, or the floor shakes"));
    rows.add(
        new Row(
            "drift",
            figure(report.loadDriftNPerMinute(), inCounts) + " " + load + " a minute",
            !inCounts && Math.abs(report.loadDriftNPerMinute()) > STEADY_N_A_MINUTE,
            "let the head warm up for a quarter of an hour; keep draughts and sun off"));
  }

  private static String figure(double value, boolean inCounts) {
    return Figures.rounded(value, inCounts ? 1 : 4);
  }

  private static Row hum(HealthReport report, boolean inCounts) {
    if (report.hum().isEmpty()) {
      return new Row("mains hum", "none seen", false, "with nothing on the bench");
    }
    MainsHum hum = report.hum().get();
    return new Row(
        "mains hum",
        String.format(
            Locale.ROOT,
            "%d Hz, seen at %.1f Hz, %s %s",
            hum.mainsHz(),
            hum.shownAtHz(),
            figure(hum.amplitudeN(), inCounts),
            inCounts ? "counts" : "N"),
        !inCounts && hum.amplitudeN() > QUIET_N,
        "shield the cell's cable at one end, keep it short, use a supply of its own");
  }
}
