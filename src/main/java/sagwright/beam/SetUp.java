package sagwright.beam;

/**
 * Where the supports, the load and the gauge stand along the shaft, in mm from its tip end, and how
 * far the shaft is turned about its axis, in degrees.
 */
public record SetUp(
    double supportAMm, double supportBMm, double loadMm, double gaugeMm, double turnDegrees) {
  public SetUp {
    if (!(supportAMm < loadMm
        && loadMm < supportBMm
        && supportAMm < gaugeMm
        && gaugeMm < supportBMm)) {
      throw new IllegalArgumentException("load and gauge stand between the supports");
    }
  }

  public double spanMm() {
    return supportBMm - supportAMm;
  }

  /** The same set-up with the shaft turned otherwise. */
  public SetUp turnedBy(double degrees) {
    return new SetUp(supportAMm, supportBMm, loadMm, gaugeMm, degrees);
  }
}
