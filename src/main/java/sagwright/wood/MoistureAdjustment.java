package sagwright.wood;

import java.util.Optional;

/**
 * How a wood's modulus along the grain changes with its moisture: Wood Handbook, eq. 5-3, {@code P
 * = P12·q^((12 − M)/(Mp − 12))} with q the ratio of the modulus at 12 % to the green one, taken as
 * fixed for the species, and Mp the intersection moisture.
 *
 * <p>Used from 6 % to Mp, both included (docs/contract.md, section 4); outside there is no answer.
 *
 * @param ratio12ToGreen q, above 0
 * @param intersectionMoisturePercent Mp, above 12
 */
public record MoistureAdjustment(double ratio12ToGreen, double intersectionMoisturePercent) {
  /** For a wood that is not in the species table (docs/contract.md, section 4). */
  public static final MoistureAdjustment FOR_UNKNOWN_SPECIES = new MoistureAdjustment(1.2, 25);

  public static final double LEAST_MOISTURE_PERCENT = 6;

  /** Empty where the species is not known. */
  public static MoistureAdjustment of(Optional<Species> species) {
    return species
        .map(s -> new MoistureAdjustment(s.ratio12ToGreen(), s.intersectionMoisturePercent()))
        .orElse(FOR_UNKNOWN_SPECIES);
  }

  /** Whether eq. 5-3 is used at that moisture. */
  public boolean holdsAt(double moisturePercent) {
    return moisturePercent >= LEAST_MOISTURE_PERCENT
        && moisturePercent <= intersectionMoisturePercent;
  }

  /**
   * The modulus that the same wood has at 12 % moisture.
   *
   * @param modulusMPa as measured
   * @param moisturePercent of the wood as measured; null where unknown
   * @return in MPa; null without a moisture, below 6 % or above Mp
   */
  public Double modulusAt12(double modulusMPa, Double moisturePercent) {
    if (moisturePercent == null || !holdsAt(moisturePercent)) {
      return null;
    }
    return modulusMPa / over12(moisturePercent);
  }

  /**
   * The modulus at another moisture.
   *
   * @param modulusAt12MPa at 12 % moisture; null where unknown
   * @param moisturePercent asked for
   * @return in MPa; null without a modulus, below 6 % or above Mp
   */
  public Double modulusAt(double moisturePercent, Double modulusAt12MPa) {
    if (modulusAt12MPa == null || !holdsAt(moisturePercent)) {
      return null;
    }
    return modulusAt12MPa * over12(moisturePercent);
  }

  private double over12(double moisturePercent) {
    return Math.pow(ratio12ToGreen, (12 - moisturePercent) / (intersectionMoisturePercent - 12));
  }
}
