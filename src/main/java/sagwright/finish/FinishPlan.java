package sagwright.finish;

import java.util.List;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;

/**
 * What a shaft is to be when it is finished. All x in mm from the tip end of the finished shaft.
 *
 * @param taper round, its first knot at 0 and its last at its length
 * @param diameterUncertaintyMm standard uncertainty of the planing, one error common to the whole
 *     taper
 * @param cutFromMm where the finished tip end lies on the blank, null to have it found
 * @param ferrule null for none
 * @param splice null for a shaft of one wood
 */
public record FinishPlan(
    Taper taper,
    double diameterUncertaintyMm,
    Double cutFromMm,
    Ferrule ferrule,
    Splice splice,
    List<Weight> weights,
    List<Extra> extras) {
  /** What an order takes where it says nothing (docs/contract.md, section 5). */
  public static final double ASSUMED_DIAMETER_UNCERTAINTY_MM = 0.05;

  public FinishPlan {
    weights = List.copyOf(weights);
    extras = List.copyOf(extras);
  }

  /** A plan of one wood, its cut to be found, with neither ferrule nor weights. */
  public static FinishPlan bare(Taper taper) {
    return new FinishPlan(
        taper, ASSUMED_DIAMETER_UNCERTAINTY_MM, null, null, null, List.of(), List.of());
  }

  public double lengthMm() {
    return taper.lengthMm();
  }

  /** The finished diameter at x. */
  public double diameterAt(double x) {
    return taper.depthAt(x);
  }

  /** The same plan cut from another place on the blank. */
  public FinishPlan cutFrom(Double mm) {
    return new FinishPlan(taper, diameterUncertaintyMm, mm, ferrule, splice, weights, extras);
  }

  /** The same plan with other weights. */
  public FinishPlan withWeights(List<Weight> others) {
    return new FinishPlan(taper, diameterUncertaintyMm, cutFromMm, ferrule, splice, others, extras);
  }

  /** The same plan of another taper. */
  public FinishPlan shapedAs(Taper other) {
    return new FinishPlan(
        other, diameterUncertaintyMm, cutFromMm, ferrule, splice, weights, extras);
  }

  /** The same plan planed so much thicker everywhere (thinner where below 0). */
  public FinishPlan thickerBy(double mm) {
    List<Station> knots =
        taper.stations().stream().map(k -> Station.round(k.xMm(), k.depthMm() + mm)).toList();
    return shapedAs(Taper.round(knots, lengthMm()));
  }
}
