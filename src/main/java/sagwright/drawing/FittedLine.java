package sagwright.drawing;

/**
 * The straight line through a run's loading branch, in the same zeros as the run it is drawn with.
 *
 * @param stiffnessNPerMm slope
 * @param loadAtZeroDeflectionN where it crosses the load axis
 * @param windowFromN least load of the window it was fitted in
 * @param windowToN greatest load of that window
 */
public record FittedLine(
    double stiffnessNPerMm, double loadAtZeroDeflectionN, double windowFromN, double windowToN) {
  double deflectionAtMm(double loadN) {
    return (loadN - loadAtZeroDeflectionN) / stiffnessNPerMm;
  }
}
