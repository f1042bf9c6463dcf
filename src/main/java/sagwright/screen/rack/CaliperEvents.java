package sagwright.screen.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sagwright.beam.Station;
import sagwright.job.RecordFigures.Measured;
import sagwright.quantity.Figures;

/** What a caliper entry changes of the one before it, in words. */
final class CaliperEvents {
  /** The plane takes more, an error of the calipers less. Ours, no source. */
  private static final double TURNED_MM = 0.2;

  /** More stations than that are counted, not told one by one. */
  private static final int TOLD = 2;

  private CaliperEvents() {}

  /** One word: entered, turned, weighed, rolled, measured. */
  static String what(Measured before, Measured now) {
    if (before == null) {
      return "entered";
    }
    if (before.stations().equals(now.stations())) {
      return Objects.equals(before.bowMm(), now.bowMm()) ? "weighed" : "rolled";
    }
    return meanMm(before) - meanMm(now) > TURNED_MM ? "turned" : "measured";
  }

  private static double meanMm(Measured measured) {
    return measured.stations().stream()
        .mapToDouble(s -> (s.depthMm() + s.widthMm()) / 2)
        .average()
        .orElseThrow();
  }

  /** What is new in figures. */
  static String figures(Measured before, Measured now) {
    List<String> parts = new ArrayList<>();
    if (now.massG() != null && (before == null || !now.massG().equals(before.massG()))) {
      parts.add(Figures.rounded(now.massG(), 1) + " g");
    }
    if (now.bowMm() != null && (before == null || !now.bowMm().equals(before.bowMm()))) {
      parts.add("bow " + Figures.rounded(now.bowMm(), 2) + " mm");
    }
    List<String> changes = before == null ? List.of() : changes(before, now);
    if (!changes.isEmpty() && changes.size() <= TOLD) {
      parts.addAll(changes);
    } else if (before == null || !before.stations().equals(now.stations())) {
      parts.add(ends(now));
    }
    if (parts.isEmpty()) {
      parts.add(
          now.massG() == null ? "as before" : Figures.rounded(now.massG(), 1) + " g as before");
    }
    return String.join(", ", parts);
  }

  /** The stations that say another thing; none where they lie elsewhere. */
  private static List<String> changes(Measured before, Measured now) {
    List<String> changes = new ArrayList<>();
    if (before.stations().size() != now.stations().size()) {
      return List.of();
    }
    for (int i = 0; i < now.stations().size(); i++) {
      Station was = before.stations().get(i);
      Station is = now.stations().get(i);
      if (was.xMm() != is.xMm()) {
        return List.of();
      }
      if (!was.equals(is)) {
        changes.add(
            String.format(
                "at %s mm %s mm, was %s",
                Figures.asTyped(is.xMm()), diameters(is), diameters(was)));
      }
    }
    return changes;
  }

  private static String diameters(Station s) {
    String depth = Figures.asTyped(s.depthMm());
    return s.depthMm() == s.widthMm() ? depth : depth + " × " + Figures.asTyped(s.widthMm());
  }

  private static String ends(Measured measured) {
    List<Station> stations = measured.stations();
    return diameters(stations.get(0))
        + " mm at the tip, "
        + diameters(stations.get(stations.size() - 1))
        + " at the butt, "
        + stations.size()
        + " stations";
  }
}
