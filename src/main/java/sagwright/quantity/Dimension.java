package sagwright.quantity;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A kind of quantity, and the unit in which the program reckons it. */
public enum Dimension {
  LENGTH("length"),
  MASS("mass"),
  LOAD("load"),
  STIFFNESS("stiffness"),
  MODULUS("modulus"),
  DENSITY("density"),
  SHARE("share");

  private final String word;

  Dimension(String word) {
    this.word = word;
  }

  /** "length", "mass" …, as a message names it. */
  public String word() {
    return word;
  }

  /** The unit that bare numbers of the program are in: mm, g, N, N/mm, MPa, kg/m³, %. */
  public Unit base() {
    return switch (this) {
      case LENGTH -> Unit.MILLIMETRE;
      case MASS -> Unit.GRAM;
      case LOAD -> Unit.NEWTON;
      case STIFFNESS -> Unit.NEWTON_PER_MILLIMETRE;
      case MODULUS -> Unit.MEGAPASCAL;
      case DENSITY -> Unit.KILOGRAM_PER_CUBIC_METRE;
      case SHARE -> Unit.PERCENT;
    };
  }

  /** Its units as a message lists them, "mm, cm, m, in, ft". */
  String unitsInWords() {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.dimension() == this)
        .map(Unit::symbol)
        .collect(Collectors.joining(", "));
  }
}
