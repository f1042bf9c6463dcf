package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import sagwright.sheet.JsonLine;
import sagwright.workshop.CaliperEntry;

/** How a shaft was measured otherwise than before. */
final class CaliperChange {
  /** Calipers read no finer, in mm. */
  private static final double SAME_MM = 0.005;

  private CaliperChange() {}

  /**
   * @param before empty for an entry that was taken back since
   */
  static List<String> between(Optional<CaliperEntry> before, Optional<CaliperEntry> now) {
    if (before.isEmpty() || now.isEmpty()) {
      return List.of("its measurements were taken back");
    }
    JsonLine was = JsonLine.parse(before.get().document()).object("shaft");
    JsonLine is = JsonLine.parse(now.get().document()).object("shaft");
    List<String> because = new ArrayList<>();
    ofStations(was.objects("stations"), is.objects("stations")).ifPresent(because::add);
    Double massWas = was.number("massG");
    Double massIs = is.number("massG");
    if (!Objects.equals(massWas, massIs)) {
      because.add(
          massIs == null
              ? "it has no mass now"
              : massWas == null
                  ? String.format(Locale.ROOT, "it was weighed: %.1f g", massIs)
                  : String.format(Locale.ROOT, "it weighs %.1f g, not %.1f", massIs, massWas));
    }
    if (because.isEmpty()) {
      because.add("measured anew: " + now.get().why());
    }
    return because;
  }

  private static Optional<String> ofStations(List<JsonLine> was, List<JsonLine> is) {
    boolean isAtSamePlaces = was.size() == is.size();
    double sum = 0;
    for (int i = 0; isAtSamePlaces && i < was.size(); i++) {
      isAtSamePlaces = was.get(i).number("xMm").equals(is.get(i).number("xMm"));
      sum += is.get(i).number("depthMm") - was.get(i).number("depthMm");
    }
    if (!isAtSamePlaces) {
      return Optional.of("the calipers were put to other places");
    }
    double thicker = sum / was.size();
    return Math.abs(thicker) < SAME_MM
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "the calipers say %.2f mm %s in the mean",
                Math.abs(thicker),
                thicker > 0 ? "thicker" : "thinner"));
  }
}
