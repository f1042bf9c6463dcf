package sagwright.finish;

/**
 * How far a shop bores into a butt to let lead in.
 *
 * @param leftAtButtMm left closed at the butt end, 0 or above
 * @param deepestMm from the butt end; above {@code leftAtButtMm}
 * @param diameterMm of the drill, above 0
 */
public record ButtBore(double leftAtButtMm, double deepestMm, double diameterMm) {
  /** Unless the shop sets another. Common practice, no source. */
  public static final ButtBore USUAL = new ButtBore(10, 320, 12);

  public ButtBore {
    if (!(leftAtButtMm >= 0 && deepestMm > leftAtButtMm && diameterMm > 0)) {
      throw new IllegalArgumentException(
          "a bore has a width, and is deeper than what is left closed at the butt");
    }
  }

  /** The bore in a shaft of a length; no longer than the shaft. */
  public LeadBore in(double lengthMm) {
    return new LeadBore(
        Math.max(0, lengthMm - deepestMm),
        Math.max(0, lengthMm - leftAtButtMm),
        diameterMm,
        LeadBore.LEAD_KG_M3);
  }
}
