package sagwright.job;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sagwright.beam.Taper;
import sagwright.modulus.Shaft;
import sagwright.workshop.BlankState;

/**
 * Whether what was written down of a shaft can be true: a slip of the pen shows in a diameter that
 * no cue has, or in how dense its wood would be. The bounds are ours and wide, from memory; for the
 * densities of the species of North America the Wood Handbook's Table 5-3 has 310 to 880 kg/m³ at
 * 12 % (from memory, too).
 */
public final class LikelyShaft {
  /** A finished tip has 8 to 10 mm (common practice). */
  public static final double LEAST_MM = 6;

  /** A sawn square for a butt has 40 to 50 mm (common practice). */
  public static final double GREATEST_MM = 80;

  public static final double LEAST_KG_M3 = 300;
  public static final double GREATEST_KG_M3 = 1100;

  private LikelyShaft() {}

  public static boolean isLikelyMm(double diameterMm) {
    return diameterMm >= LEAST_MM && diameterMm <= GREATEST_MM;
  }

  /**
   * The density in kg/m³ that mass and diameters make, where no wood has it; empty where one may,
   * and for what is not all wood: a finished cue has ferrule, joint and weights, a check rod is
   * steel.
   *
   * @param massG null where not weighed
   * @param stage null where not said
   */
  public static OptionalDouble unlikelyKgM3(Taper taper, Double massG, String stage) {
    if (massG == null
        || BlankState.FINISHED_CUE.equals(stage)
        || BlankState.CHECK_ROD.equals(stage)) {
      return OptionalDouble.empty();
    }
    double densityKgM3 = massG / taper.volumeMm3() * 1e6;
    return densityKgM3 >= LEAST_KG_M3 && densityKgM3 <= GREATEST_KG_M3
        ? OptionalDouble.empty()
        : OptionalDouble.of(densityKgM3);
  }

  /** What speaks against a shaft as a whole, one line; empty for nothing. */
  public static Optional<String> doubt(Shaft shaft, String stage) {
    OptionalDouble unlikely = unlikelyKgM3(shaft.taper(), shaft.massG(), stage);
    return unlikely.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "mass and diameters make this wood %.0f kg/m³, which is too %s: look at both again",
                unlikely.getAsDouble(),
                unlikely.getAsDouble() < LEAST_KG_M3 ? "light" : "dense"));
  }
}
