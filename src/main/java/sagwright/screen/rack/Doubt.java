package sagwright.screen.rack;

import java.util.Locale;
import sagwright.job.LikelyShaft;
import sagwright.quantity.Figures;

/**
 * Something typed that can hardly be, but may be true: it is asked about before it is kept.
 *
 * @param words what stands out, one line without a full stop
 * @param field the one that it is about, as complaints call it
 */
record Doubt(String words, String field) {
  /**
   * A diameter that no cue has.
   *
   * @param what depth or width
   * @param at where it was read, "1490 mm"
   */
  static Doubt ofDiameter(String what, double mm, String at, String field) {
    String words =
        String.format(
            "%s %s at %s: cues and their squares have %s to %s mm",
            what,
            Figures.asTyped(mm),
            at,
            Figures.asTyped(LikelyShaft.LEAST_MM),
            Figures.asTyped(LikelyShaft.GREATEST_MM));
    return new Doubt(words, field);
  }

  /** A density that no wood has. */
  static Doubt ofDensity(double kgM3) {
    String words =
        String.format(
            Locale.ROOT,
            "mass and diameters make this wood %.0f kg/m³: woods have %.0f to %.0f",
            kgM3,
            LikelyShaft.LEAST_KG_M3,
            LikelyShaft.GREATEST_KG_M3);
    return new Doubt(words, "mass");
  }
}
