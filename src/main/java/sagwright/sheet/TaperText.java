package sagwright.sheet;

import sagwright.beam.Taper;

/**
 * A finished taper by itself, {@code {"lengthMm", "taper"}}, written as an order's finish has it.
 */
public final class TaperText {
  private TaperText() {}

  /**
   * @param taper round, its first knot at 0 and its last at its length
   */
  public static String write(Taper taper) {
    return line(taper).toString();
  }

  public static Taper read(String text) throws BadDocumentException {
    return FinishReader.taper(new JsonObject(JsonDocument.parse(text), "", "lengthMm", "taper"));
  }

  static JsonLine line(Taper taper) {
    return new JsonLine()
        .put("lengthMm", taper.lengthMm())
        .putObjects(
            "taper",
            taper.stations().stream()
                .map(k -> new JsonLine().put("xMm", k.xMm()).put("diameterMm", k.depthMm()))
                .toList());
  }
}
