package sagwright.screen.orders;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;

/**
 * Metals that ferrules and weights are made of, with their densities in kg/m³ at room temperature:
 * lead as in the CRC Handbook of Chemistry and Physics (from memory), the alloys as commonly
 * traded, no source.
 */
enum Metal {
  BRASS(8500),
  LEAD(11_340),
  STEEL(7850),
  NICKEL_SILVER(8700),
  ALUMINIUM(2700),
  TITANIUM(4510);

  private final double densityKgM3;

  Metal(double densityKgM3) {
    this.densityKgM3 = densityKgM3;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** A density as a person calls it: the metal's name where it is that of a metal. */
  static String called(double densityKgM3) {
    return Arrays.stream(values())
        .filter(metal -> metal.densityKgM3 == densityKgM3)
        .map(Metal::word)
        .findFirst()
        .orElseGet(() -> Figures.asTyped(densityKgM3));
  }

  /**
   * A metal, or as much of its name as no other begins with, or a density.
   *
   * @param name how a complaint calls it
   * @return in kg/m³
   */
  static double density(String name, String typed, Metal usual) throws ComplaintException {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return usual.densityKgM3;
    }
    if (!Character.isLetter(text.charAt(0))) {
      return Typed.quantity(name, text, Unit.KILOGRAM_PER_CUBIC_METRE);
    }
    List<Metal> meant =
        Arrays.stream(values()).filter(metal -> metal.word().startsWith(text)).toList();
    if (meant.size() != 1) {
      throw new ComplaintException(
          name
              + ": a density, or one of "
              + Arrays.stream(values()).map(Metal::word).collect(Collectors.joining(", ")));
    }
    return meant.get(0).densityKgM3;
  }
}
