package sagwright.beam;

/**
 * A place along the shaft where the calipers were put.
 *
 * @param xMm from the tip end
 * @param depthMm diameter in the plane of bending when the shaft lies at 0°
 * @param widthMm diameter across it
 */
public record Station(double xMm, double depthMm, double widthMm) {
  /** A round station. */
  public static Station round(double xMm, double diameterMm) {
    return new Station(xMm, diameterMm, diameterMm);
  }
}
