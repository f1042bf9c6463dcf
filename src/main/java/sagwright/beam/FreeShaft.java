package sagwright.beam;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A shaft hung free at both ends: the problem whose answer is {@link FreeFreeFrequency}.
 *
 * @param lengthMm of the shaft
 * @param bendingStiffnessNMm2 E·I at x in N·mm², above 0
 * @param massPerMmG mass per length at x in g/mm, 0 or above
 * @param kinks of either, in any order
 * @param pointMasses on the shaft
 */
public record FreeShaft(
    double lengthMm,
    DoubleUnaryOperator bendingStiffnessNMm2,
    DoubleUnaryOperator massPerMmG,
    List<Kink> kinks,
    List<PointMass> pointMasses) {
  public FreeShaft {
    kinks = List.copyOf(kinks);
    pointMasses = List.copyOf(pointMasses);
  }
}
