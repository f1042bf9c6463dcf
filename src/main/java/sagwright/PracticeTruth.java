package sagwright;

import java.util.function.ToDoubleFunction;
import sagwright.check.CheckRod;
import sagwright.example.ExampleRack;
import sagwright.example.ExampleWood;
import sagwright.job.LaidBlank;
import sagwright.wood.SafeStress;
import sagwright.wood.Species;
import sagwright.wood.SpeciesTable;

/**
 * What lies on the practice bench truly is, in MPa: a steel rod is steel, a blank of the example
 * workshop has wood of its own.
 *
 * @param example null where the workshop is not the example
 */
record PracticeTruth(SpeciesTable species, ExampleRack example)
    implements ToDoubleFunction<LaidBlank> {
  private static final double UNKNOWN_WOOD_MPA = 12_000;

  /** Where no meter was held to the wood. */
  private static final double USUAL_MOISTURE_PERCENT = 12;

  @Override
  public double applyAsDouble(LaidBlank blank) {
    if (SafeStress.STEEL.equalsIgnoreCase(blank.shaft().species())) {
      return CheckRod.ASSUMED_STEEL_MODULUS_MPA.value();
    }
    String tag = blank.blank().tag();
    ExampleWood wood = example == null ? null : example.wood(tag).orElse(null);
    if (wood != null) {
      Double moisture = blank.shaft().moisturePercent();
      return wood.modulusMPa(moisture == null ? USUAL_MOISTURE_PERCENT : moisture);
    }
    return byTag(tag, blank.shaft().species());
  }

  /**
   * Around the published modulus of the species, a tenth up or down by the blank's tag; shear taken
   * out, which tabled moduli still hold (Wood Handbook, Table 5-3, notes: about 1.1).
   */
  private double byTag(String tag, String speciesName) {
    double published =
        species.find(speciesName).map(Species::modulus12MPa).orElse(UNKNOWN_WOOD_MPA);
    double share = Math.floorMod(tag.hashCode() * 31, 1000) / 999.0;
    return 1.1 * published * (0.82 + 0.2 * share);
  }
}
