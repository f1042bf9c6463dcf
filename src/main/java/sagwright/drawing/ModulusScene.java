package sagwright.drawing;

import java.util.List;
import sagwright.beam.Taper;
import sagwright.uncertainty.Estimate;

/**
 * The modulus along a shaft, over the shaft.
 *
 * @param taper its outline
 * @param along rising in x; two places at one x are a step
 * @param runs what each run has shown, where it listens
 */
public record ModulusScene(Taper taper, List<Place> along, List<HeardRun> runs) {
  public ModulusScene {
    along = List.copyOf(along);
    runs = List.copyOf(runs);
  }

  /** The modulus at a place of the shaft. */
  public record Place(double xMm, Estimate modulusMPa) {}

  /**
   * One run.
   *
   * @param number counted from 1
   * @param fromMm nine tenths of its answer come from here
   * @param middleMm half of it from short of here
   * @param toMm to here
   */
  public record HeardRun(
      int number, double fromMm, double middleMm, double toMm, Estimate modulusMPa) {}
}
