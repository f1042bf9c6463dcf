package sagwright.job;

import sagwright.modulus.Shaft;
import sagwright.wood.DensityAtMoisture;
import sagwright.wood.MoistureAdjustment;
import sagwright.wood.SpeciesTable;
import sagwright.wood.YearInTheRoom;

/**
 * A wood as it was tested, at 12 % moisture, and at both ends of a year in a room. What a formula
 * does not reach is null.
 *
 * @param moisturePercent as measured, null where it was not
 * @param modulusMPa as tested
 * @param densityKgM3 as tested, null without a mass
 */
public record WoodInTheYear(
    Double moisturePercent,
    double modulusMPa,
    Double modulusAt12MPa,
    Double densityKgM3,
    Double densityAt12KgM3,
    YearInTheRoom.SeasonalModulus year) {
  private static final double USUAL_PERCENT = 12;

  static WoodInTheYear of(SpeciesTable species, Shaft shaft, double modulusMPa) {
    MoistureAdjustment wood = MoistureAdjustment.of(species.find(shaft.species()));
    Double moisture = shaft.moisturePercent();
    Double at12 = wood.modulusAt12(modulusMPa, moisture);
    Double density = shaft.densityKgM3();
    return new WoodInTheYear(
        moisture,
        modulusMPa,
        at12,
        density,
        density == null || moisture == null
            ? null
            : DensityAtMoisture.convert(
                density, new DensityAtMoisture.Moistures(moisture, USUAL_PERCENT)),
        YearInTheRoom.COMMON.of(wood, at12));
  }
}
