package sagwright.wood;

/**
 * How a wood's density changes with its moisture between oven-dry and 30 %: Wood Handbook, eq. 4-13
 * {@code Gx = Gb/(1 − 0.265·Gb·(1 − x/30))} and 4-14 {@code ρ = 1000·Gx·(1 + x/100)}, with Gx the
 * oven-dry mass over the volume at x % against water, and Gb the same over the green volume.
 *
 * <p>Shrinkage is the average of all woods (0.265·Gb): a wood that shrinks otherwise comes out off
 * by a part of a percent.
 */
public final class DensityAtMoisture {
  /** Above it wood neither swells nor is eq. 4-13 meant for it. */
  public static final double GREATEST_MOISTURE_PERCENT = 30;

  private static final double SHRINKAGE_FACTOR = 0.265;

  private DensityAtMoisture() {}

  /**
   * Density at {@code toPercent} of a wood weighed and measured at {@code fromPercent}.
   *
   * @param densityKgM3 as measured, mass and volume both at {@code fromPercent}
   * @return in kg/m³; null where either moisture lies outside 0…30 %
   */
  public static Double convert(double densityKgM3, Moistures change) {
    if (!holdsAt(change.fromPercent()) || !holdsAt(change.toPercent())) {
      return null;
    }
    double gx = densityKgM3 / (1000 * (1 + change.fromPercent() / 100));
    double gb = gx / (1 + SHRINKAGE_FACTOR * gx * dryness(change.fromPercent()));
    return fromBasicGravity(gb, change.toPercent());
  }

  /**
   * Density in kg/m³ of a wood of basic specific gravity Gb (oven-dry mass, green volume), at a
   * moisture within 0…30 %.
   */
  static double fromBasicGravity(double gb, double moisturePercent) {
    return 1000 * gravityAt(gb, moisturePercent) * (1 + moisturePercent / 100);
  }

  /** Gx of eq. 4-13. */
  static double gravityAt(double gb, double moisturePercent) {
    return gb / (1 - SHRINKAGE_FACTOR * gb * dryness(moisturePercent));
  }

  private static double dryness(double moisturePercent) {
    return 1 - moisturePercent / GREATEST_MOISTURE_PERCENT;
  }

  private static boolean holdsAt(double moisturePercent) {
    return moisturePercent >= 0 && moisturePercent <= GREATEST_MOISTURE_PERCENT;
  }

  /** From which moisture to which, in percent of the oven-dry mass. */
  public record Moistures(double fromPercent, double toPercent) {}
}
