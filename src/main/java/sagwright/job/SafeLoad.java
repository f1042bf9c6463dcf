package sagwright.job;

import sagwright.beam.Flexibility;
import sagwright.beam.PeakStress;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.bench.LoadLimits;
import sagwright.check.CheckRod;
import sagwright.modulus.Shaft;
import sagwright.sheet.Sheet;
import sagwright.wood.SafeStress;
import sagwright.wood.Species;
import sagwright.wood.SpeciesTable;

/** How far a shaft may be loaded on a set-up, and how far a test of it goes. */
public final class SafeLoad {
  /** Enough for a good line on a cue shaft over a metre; common practice, no source. */
  private static final double USUAL_TARGET_N = 20;

  /** A test stays this far below what is safe, and below what the instruments can show. */
  private static final double SHARE_OF_THE_LIMIT = 0.8;

  /** For a wood whose modulus is not published, to foresee how far it bends. */
  private static final double UNKNOWN_MODULUS_MPA = 12000;

  private final SpeciesTable species;
  private final double shareOfStrength;

  /**
   * @param shareOfStrength what the shop lets a test use of the wood's bending strength
   */
  public SafeLoad(SpeciesTable species, double shareOfStrength) {
    this.species = species;
    this.shareOfStrength = shareOfStrength;
  }

  /** The safe stress of a shaft's wood, and what it rests on. */
  public SafeStress safeStress(Shaft shaft) {
    return SafeStress.of(species, shaft.species(), shareOfStrength);
  }

  /**
   * @param sheet with a set-up
   * @param calibration complete: the instruments' own ends count too
   */
  public LoadLimits limits(Sheet sheet, Calibration calibration) {
    SetUp setUp = sheet.setUp().positions();
    double safeN =
        PeakStress.of(sheet.shaft().taper(), setUp).loadAtN(safeStress(sheet.shaft()).stressMPa());
    double mostN =
        Math.min(
            Math.min(safeN, calibration.load().greatestN()),
            calibration.gauge().greatestMm() * expectedStiffnessNPerMm(sheet));
    return new LoadLimits(Math.min(USUAL_TARGET_N, SHARE_OF_THE_LIMIT * mostN), safeN);
  }

  /** What the bench would show of a shaft with the published modulus of its species, N/mm. */
  public double expectedStiffnessNPerMm(Sheet sheet) {
    return modulusMPa(sheet.shaft().species())
        / Flexibility.of(sheet.shaft().taper(), sheet.setUp().positions())
            .perMm(sheet.ratio().value());
  }

  private double modulusMPa(String name) {
    if (SafeStress.STEEL.equalsIgnoreCase(name)) {
      return CheckRod.ASSUMED_STEEL_MODULUS_MPA.value();
    }
    return species.find(name).map(Species::modulus12MPa).orElse(UNKNOWN_MODULUS_MPA);
  }
}
