package sagwright.wood;

import sagwright.uncertainty.Warning;

/**
 * How far a shaft may be stressed on the bench: a share of its wood's published bending strength.
 *
 * @param stressMPa greatest bending stress in MPa
 * @param basis what it rests on
 * @param species as written, null where not stated
 */
public record SafeStress(double stressMPa, Basis basis, String species) implements Warning {
  /** A quarter of the bending strength unless the shop sets another share. */
  public static final double ASSUMED_SHARE = 0.25;

  /** For a wood whose strength is not known, whatever the share. */
  public static final double FOR_UNKNOWN_STRENGTH_MPA = 15;

  /** What a check rod has for its species, though it is no wood. */
  public static final String STEEL = "steel";

  /** Soft steel yields from about 200 MPa on (from memory): half of that. */
  private static final double FOR_STEEL_MPA = 100;

  /** What a safe stress rests on. */
  public enum Basis {
    PUBLISHED_STRENGTH,
    SPECIES_WITHOUT_STRENGTH,
    SPECIES_UNKNOWN,
    SPECIES_NOT_STATED,
    GROUND_STEEL
  }

  /**
   * @param species as written on the blank, null where not stated
   * @param share of the bending strength, above 0 and up to 1
   */
  public static SafeStress of(SpeciesTable table, String species, double share) {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException("a share of the strength lies above 0 and up to 1");
    }
    if (species == null) {
      return new SafeStress(FOR_UNKNOWN_STRENGTH_MPA, Basis.SPECIES_NOT_STATED, null);
    }
    if (STEEL.equalsIgnoreCase(species)) {
      return new SafeStress(FOR_STEEL_MPA, Basis.GROUND_STEEL, species);
    }
    Species known = table.find(species).orElse(null);
    if (known == null) {
      return new SafeStress(FOR_UNKNOWN_STRENGTH_MPA, Basis.SPECIES_UNKNOWN, species);
    }
    if (known.bendingStrength12MPa() == null) {
      return new SafeStress(FOR_UNKNOWN_STRENGTH_MPA, Basis.SPECIES_WITHOUT_STRENGTH, species);
    }
    double stress = known.bendingStrength12MPa() * share;
    return new SafeStress(stress, Basis.PUBLISHED_STRENGTH, species);
  }

  /** Whether the maker must be told that the wood's own strength stands behind nothing here. */
  public boolean isGuess() {
    return basis != Basis.PUBLISHED_STRENGTH && basis != Basis.GROUND_STEEL;
  }

  @Override
  public String inWords() {
    return switch (basis) {
      case PUBLISHED_STRENGTH -> "safe stress from the published bending strength of " + species;
      case SPECIES_WITHOUT_STRENGTH ->
          "no bending strength is published for " + species + ": 15 MPa is taken as safe";
      case SPECIES_UNKNOWN ->
          "the species table does not know " + species + ": 15 MPa is taken as safe";
      case SPECIES_NOT_STATED -> "no species is stated: 15 MPa is taken as safe";
      case GROUND_STEEL -> "a steel rod: 100 MPa is taken as safe";
    };
  }
}
