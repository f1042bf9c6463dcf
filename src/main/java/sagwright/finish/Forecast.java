package sagwright.finish;

import java.util.List;
import sagwright.uncertainty.Warning;

/**
 * What a blank will be when it is finished.
 *
 * @param stiffnesses one a set-up of the request, in its order
 * @param massG null where the blank was not weighed, as the next two
 * @param firstBendingHz hung free at both ends
 */
public record Forecast(
    Cut cut,
    List<AskedStiffness> stiffnesses,
    Double massG,
    Double balanceFromButtMm,
    Double firstBendingHz,
    List<Warning> warnings) {
  public Forecast {
    stiffnesses = List.copyOf(stiffnesses);
    warnings = List.copyOf(warnings);
  }

  public boolean fits() {
    return cut.fits();
  }
}
