package sagwright.screen.rack;

import java.util.List;
import sagwright.beam.SectionShape;

/**
 * A blank as it is written down.
 *
 * @param species empty where unknown
 * @param stage empty where not said
 * @param lengthMm null: the last station
 * @param massG null where not weighed
 * @param moisturePercent null where not measured
 * @param stations from the tip end on
 */
public record BlankEntry(
    String tag,
    String species,
    String stage,
    SectionShape section,
    Double lengthMm,
    Double massG,
    Double moisturePercent,
    List<Calipers> stations) {
  public BlankEntry {
    stations = List.copyOf(stations);
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
