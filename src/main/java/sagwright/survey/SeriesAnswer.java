package sagwright.survey;

import java.util.List;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/**
 * What repeats of one set-up, turned or not, have shown together.
 *
 * @param modulusMPa the blank's: mean over the runs that count, and over the turn where the grain
 *     makes it vary; total standard uncertainty, with what is common to all runs counted once
 * @param repeatabilityMPa standard deviation of one run, grain taken out where it is seen; null
 *     where no degree of freedom is left
 * @param degreesOfFreedom of the repeatability
 * @param runs in the order given
 * @param shape what out-of-round alone makes of the shaft's stiffness, by the calipers
 * @param stiffness how the shaft's stiffness was seen to change with the turn; null where the turns
 *     do not tell: fewer than three, half turns counted as one
 * @param grain how the modulus was seen to change with the turn, out-of-round taken out; null as
 *     before
 */
public record SeriesAnswer(
    Estimate modulusMPa,
    Double repeatabilityMPa,
    int degreesOfFreedom,
    List<TurnedRun> runs,
    TurnEffect shape,
    TurnEffect stiffness,
    TurnEffect grain,
    List<Warning> warnings) {
  public SeriesAnswer {
    runs = List.copyOf(runs);
    warnings = List.copyOf(warnings);
  }

  /**
   * One run of a series.
   *
   * @param fromShapePercent how much stiffer than at the mean of the runs' turns the calipers say
   *     the shaft lies here
   * @param fromGrainPercent how far its modulus lies above the series' mean: grain, and error
   * @param setAside why it does not count, as a sentence; null where it does
   */
  public record TurnedRun(
      double turnDegrees,
      double shaftStiffnessNPerMm,
      double modulusMPa,
      double fromShapePercent,
      double fromGrainPercent,
      String setAside) {}

  /** The way to mark: where stiffness was seen to change, else what the calipers say. */
  public TurnEffect stifferWay() {
    return stiffness != null ? stiffness : shape;
  }
}
