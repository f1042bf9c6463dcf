package sagwright.run;

import java.util.List;
import sagwright.uncertainty.Warning;

/**
 * The straight line through a run's loading branch.
 *
 * @param stiffnessNPerMm slope of load on deflection, as the bench shows it
 * @param lineUncertaintyNPerMm standard uncertainty of the slope from the readings alone (no
 *     scales): the larger of what the stated uncertainties give (York) and the same scaled by
 *     √(S/(n−2))
 * @param loadAtZeroDeflectionN the line's load at deflection 0, in the run's own zeros
 * @param restLoadN load of the rest before loading: the zero that loads below are reckoned from
 * @param restDeflectionMm deflection of that rest
 * @param windowFromN least load of the fit window, reckoned from the rest
 * @param windowToN greatest load of the fit window, reckoned from the rest
 * @param used which of the run's samples the line was fitted to
 * @param samplesSetAside samples inside the window that were left out as wild
 * @param hysteresisPercent gap of the unloading over the loading branch at half the greatest load,
 *     in percent of the greatest deflection; null without unloading
 * @param greatestLoadN the greatest load that was kept, reckoned from the rest (hand-read: from the
 *     least)
 */
public record StiffnessFit(
    double stiffnessNPerMm,
    double lineUncertaintyNPerMm,
    double loadAtZeroDeflectionN,
    double restLoadN,
    double restDeflectionMm,
    double windowFromN,
    double windowToN,
    boolean[] used,
    int samplesSetAside,
    Double hysteresisPercent,
    double greatestLoadN,
    List<Warning> warnings) {
  public StiffnessFit {
    warnings = List.copyOf(warnings);
  }

  public int samplesUsed() {
    int count = 0;
    for (boolean u : used) {
      count += u ? 1 : 0;
    }
    return count;
  }
}
