package sagwright.drawing;

import java.util.List;
import sagwright.beam.Splice;
import sagwright.beam.Taper;

/**
 * A finished shaft as it is drawn; places on it are in mm from its own tip end.
 *
 * @param taper the finished round
 * @param cutFromMm where its tip end lies on the blank
 * @param ferruleMm length of the ferrule, 0 for none
 * @param splice null for none
 * @param weights let in on the centre line
 * @param balanceFromButtMm NaN where it is not known
 */
public record FinishedShaft(
    Taper taper,
    double cutFromMm,
    double ferruleMm,
    Splice splice,
    List<Weight> weights,
    double balanceFromButtMm) {
  /** A cylinder on the centre line. */
  public record Weight(double fromMm, double toMm, double diameterMm) {}

  public FinishedShaft {
    weights = List.copyOf(weights);
  }

  /** The bare wood, cut from a place on its blank. */
  public static FinishedShaft plain(Taper taper, double cutFromMm) {
    return new FinishedShaft(taper, cutFromMm, 0, null, List.of(), Double.NaN);
  }
}
