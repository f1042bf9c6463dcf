package sagwright.screen.rack;

import java.util.List;
import sagwright.beam.SectionShape;
import sagwright.wood.Grain;

/**
 * A blank as it is written down.
 *
 * @param species empty where unknown
 * @param stage empty where not said
 * @param lengthMm null: the last station
 * @param massG null where not weighed
 * @param moisturePercent null where not measured
 * @param stations from the tip end on
 * @param grain {@link Grain#UNSEEN} where nothing of it is said
 * @param why it is written down anew; empty for a new blank
 */
public record BlankEntry(
    String tag,
    String species,
    String stage,
    SectionShape section,
    Double lengthMm,
    Double massG,
    Double moisturePercent,
    List<Calipers> stations,
    Grain grain,
    String why) {
  public BlankEntry {
    stations = List.copyOf(stations);
  }

  /** The same blank weighed again. */
  BlankEntry weighed(double g) {
    return new BlankEntry(
        tag, species, stage, section, lengthMm, g, moisturePercent, stations, grain, "weighed");
  }

  /**
   * Where the calipers were put.
   *
   * @param xMm from the tip end
   * @param depthMm in the plane of bending when the shaft lies at 0°
   * @param widthMm across it, null where it was not measured
   */
  public record Calipers(double xMm, double depthMm, Double widthMm) {}
}
