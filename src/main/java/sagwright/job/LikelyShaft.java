package sagwright.job;

import java.util.Locale;
import java.util.Optional;
import sagwright.modulus.Shaft;

/**
 * Whether what was written down of a shaft can be true: a slip of the pen shows in how dense its
 * wood would be. Bounds for any wood that a cue is made of, dry or wet, wide (common practice; the
 * Wood Handbook's Table 5-3 has 310 to 880 kg/m³ at 12 % for the species of North America, from
 * memory).
 */
public final class LikelyShaft {
  private static final double LEAST_KG_M3 = 300;
  private static final double GREATEST_KG_M3 = 1100;

  private LikelyShaft() {}

  /** What speaks against it, one line; empty for nothing. */
  public static Optional<String> doubt(Shaft shaft) {
    Double density = shaft.densityKgM3();
    if (density == null || (density >= LEAST_KG_M3 && density <= GREATEST_KG_M3)) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "mass and diameters make this wood %.0f kg/m³, which is too %s: look at both again",
            density,
            density < LEAST_KG_M3 ? "light" : "dense"));
  }
}
