package sagwright.sheet;

import sagwright.beam.Splice;

/** The {@code splice} object of a shaft and of a finish. */
final class SpliceReader {
  /** A diameter carried on to the end is not known better. */
  private static final double ROUNDING_MM = 1e-9;

  private SpliceReader() {}

  /**
   * @param holder the object that may have a {@code splice}
   * @param lengthMm of the shaft
   * @param buttDiameterMm of the round at the butt end
   * @return null where there is none
   */
  static Splice readFrom(JsonObject holder, double lengthMm, double buttDiameterMm)
      throws BadDocumentException {
    if (!holder.has("splice")) {
      return null;
    }
    JsonObject json =
        holder.object(
            "splice",
            "fromMm",
            "coreHalfAtButtMm",
            "densityKgM3",
            "modulusMPa",
            "modulusUncertaintyPercent");
    double fromMm = json.number("fromMm", NumberRange.NOT_NEGATIVE);
    if (fromMm > lengthMm) {
      throw json.bad("fromMm", "is " + fromMm + ", past the butt end at " + lengthMm);
    }
    double coreHalfMm = json.number("coreHalfAtButtMm", NumberRange.NOT_NEGATIVE);
    if (coreHalfMm > buttDiameterMm / 2 + ROUNDING_MM) {
      throw json.bad(
          "coreHalfAtButtMm",
          "is " + coreHalfMm + ", more than the radius at the butt, " + buttDiameterMm / 2);
    }
    return new Splice(
        fromMm,
        coreHalfMm,
        json.number("densityKgM3", NumberRange.NOT_NEGATIVE),
        json.number("modulusMPa", NumberRange.ABOVE_ZERO),
        json.numberOr("modulusUncertaintyPercent", 0, NumberRange.NOT_NEGATIVE));
  }
}
