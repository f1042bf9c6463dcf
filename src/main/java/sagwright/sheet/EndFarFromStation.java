package sagwright.sheet;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.Taper;
import sagwright.uncertainty.Warning;

/**
 * An end of the shaft whose diameters are carried on over a long way.
 *
 * @param end "tip" or "butt"
 * @param farMm from the nearest station
 */
public record EndFarFromStation(String end, double farMm) implements Warning {
  /** What may be carried on without a word (docs/contract.md, section 3). */
  public static final double GREATEST_MM = 100;

  @Override
  public String inWords() {
    return "the "
        + end
        + " end lies "
        + Math.round(farMm)
        + " mm from the nearest station; its diameter is carried straight on";
  }

  static List<Warning> of(Taper taper) {
    List<Warning> warnings = new ArrayList<>();
    double tipMm = taper.stationXMm(0);
    double buttMm = taper.lengthMm() - taper.stationXMm(taper.stationCount() - 1);
    if (tipMm > GREATEST_MM) {
      warnings.add(new EndFarFromStation("tip", tipMm));
    }
    if (buttMm > GREATEST_MM) {
      warnings.add(new EndFarFromStation("butt", buttMm));
    }
    return warnings;
  }
}
