package sagwright.job;

import java.util.List;
import sagwright.finish.BlankWood;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Warning;
import sagwright.workshop.ShortShaft;

/**
 * What the runs of a blank have shown of its wood.
 *
 * @param ratio r = E/G that belongs to this modulus
 * @param runIds the runs that it rests on, oldest first
 * @param assumed the keys whose defaults were taken
 * @param warnings of the runs
 */
public record KnownWood(
    ModulusAlong modulusMPa,
    double ratio,
    List<Long> runIds,
    List<String> assumed,
    List<Warning> warnings) {
  public KnownWood {
    runIds = List.copyOf(runIds);
    assumed = List.copyOf(assumed);
    warnings = List.copyOf(warnings);
  }

  /** What a blank of this wood gives to the shaft that is to come out of it. */
  BlankWood in(ShortShaft shaft) {
    return new BlankWood(shaft.taper(), shaft.massG(), modulusMPa, ratio, shaft.isSpliced());
  }
}
