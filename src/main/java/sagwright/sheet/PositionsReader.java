package sagwright.sheet;

import sagwright.beam.SetUp;

/** Four places along a shaft: supports, load and gauge, of a bench's set-up and of an ask's. */
final class PositionsReader {
  private PositionsReader() {}

  /**
   * @param lengthMm of the shaft that all four lie on; infinite where it is not known yet
   */
  static SetUp read(JsonObject json, double lengthMm, double turnDegrees)
      throws BadDocumentException {
    double supportAMm = place(json, "supportAMm", lengthMm);
    double supportBMm = place(json, "supportBMm", lengthMm);
    double loadMm = place(json, "loadMm", lengthMm);
    double gaugeMm = place(json, "gaugeMm", lengthMm);
    if (supportBMm <= supportAMm) {
      throw json.bad(
          "supportBMm",
          "is " + supportBMm + ", not beyond " + json.path("supportAMm") + ", " + supportAMm);
    }
    String supports =
        json.path("supportAMm")
            + " and "
            + json.path("supportBMm")
            + " ("
            + supportAMm
            + " and "
            + supportBMm
            + ")";
    if (loadMm <= supportAMm || loadMm >= supportBMm) {
      throw json.bad("loadMm", "is " + loadMm + ", not between " + supports);
    }
    if (gaugeMm <= supportAMm || gaugeMm >= supportBMm) {
      throw json.bad("gaugeMm", "is " + gaugeMm + ", not between " + supports);
    }
    return new SetUp(supportAMm, supportBMm, loadMm, gaugeMm, turnDegrees);
  }

  private static double place(JsonObject json, String key, double lengthMm)
      throws BadDocumentException {
    double atMm = json.number(key, NumberRange.NOT_NEGATIVE);
    if (atMm > lengthMm) {
      throw json.bad(key, "is " + atMm + ", beyond the shaft's end at " + lengthMm);
    }
    return atMm;
  }
}
