package sagwright.grade;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Taper;
import sagwright.finish.BlankWood;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishedShaft;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/**
 * A finished cue that was measured on the bench, so that its stiffness can be asked for again.
 *
 * @param name its tag
 * @param taper its own, x from its tip end
 * @param splice its own, null for a shaft of one wood
 * @param modulusMPa of its shaft wood, with the uncertainty of its runs
 * @param modulusToShearRatio r = E/G that belongs to this modulus
 * @param measured what the bench showed; null where the cue was planed since
 */
public record ReferenceCue(
    String name,
    Taper taper,
    Splice splice,
    ModulusAlong modulusMPa,
    double modulusToShearRatio,
    Measured measured) {
  /**
   * A stiffness as measured.
   *
   * @param setUp its turn plays no part
   * @param stiffnessNPerMm of the shaft alone
   */
  public record Measured(SetUp setUp, Estimate stiffnessNPerMm) {}

  /** Whether a set-up lies on this cue. */
  public boolean canLieOn(SetUp setUp) {
    return setUp.supportAMm() >= 0 && setUp.supportBMm() <= taper.lengthMm();
  }

  /** Whether the stiffness at a set-up was measured there; else it is reckoned from the wood. */
  public boolean isMeasuredAt(SetUp setUp) {
    return measured != null && measured.setUp().turnedBy(0).equals(setUp.turnedBy(0));
  }

  /**
   * Its stiffness at a set-up in N/mm: as measured where it was measured just there; else by the
   * beam with its own taper, splice and modulus. The uncertainty of what is reckoned counts modulus
   * and splice wood as independent, which is on the safe side.
   *
   * @param setUp that lies on this cue
   */
  public Estimate stiffnessNPerMm(SetUp setUp) {
    if (isMeasuredAt(setUp)) {
      return measured.stiffnessNPerMm();
    }
    // what the calipers may be off is in the modulus already
    FinishPlan asItIs = new FinishPlan(taper, 0, 0.0, null, splice, List.of(), List.of());
    BlankWood wood = new BlankWood(taper, null, modulusMPa, modulusToShearRatio, splice != null);
    return new FinishedShaft(wood, asItIs, 0).asked(setUp).estimate();
  }
}
