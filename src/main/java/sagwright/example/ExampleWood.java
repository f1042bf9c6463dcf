package sagwright.example;

import java.util.Random;
import sagwright.wood.MoistureAdjustment;
import sagwright.wood.Species;

/**
 * What the wood of an example blank truly is. Swelling is left out: only mass and modulus go with
 * the moisture.
 *
 * @param modulus12MPa true modulus at 12 % moisture, shear taken out
 * @param density12KgM3 true density at 12 % moisture
 */
public record ExampleWood(String tag, Species species, double modulus12MPa, double density12KgM3) {
  /**
   * Tabled moduli still hold the shear of the test piece (Wood Handbook, Table 5-3, notes: about
   * 1.1 times that without); a maker keeps no poor boards, nor gets the best alone.
   */
  private static final double MEAN_OVER_TABLED = 1.03;

  private static final double DENSITY_SPREAD = 0.06;
  private static final double MODULUS_SPREAD_AT_A_DENSITY = 0.07;

  /** Drawn for a tag: the same seed, the same wood. */
  static ExampleWood drawn(String tag, Species species) {
    Random random = ExampleRack.randomOf("wood of " + tag);
    double heavier = DENSITY_SPREAD * within2(random);
    double stiffer = heavier + MODULUS_SPREAD_AT_A_DENSITY * within2(random);
    return new ExampleWood(
        tag,
        species,
        MEAN_OVER_TABLED * species.modulus12MPa() * (1 + stiffer),
        species.density12KgM3() * (1 + heavier));
  }

  private static double within2(Random random) {
    return Math.max(-2, Math.min(2, random.nextGaussian()));
  }

  /** The modulus at another moisture; beyond where the wood is wet through it falls no further. */
  public double modulusMPa(double moisturePercent) {
    MoistureAdjustment adjustment =
        new MoistureAdjustment(species.ratio12ToGreen(), species.intersectionMoisturePercent());
    return adjustment.modulusAt(
        Math.min(moisturePercent, species.intersectionMoisturePercent()), modulus12MPa);
  }

  /** The density at another moisture. */
  public double densityKgM3(double moisturePercent) {
    return density12KgM3 * (100 + moisturePercent) / 112;
  }
}
