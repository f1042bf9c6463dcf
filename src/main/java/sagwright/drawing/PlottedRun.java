package sagwright.drawing;

/**
 * A run as a curve, both from its own rest. The arrays are not copied and must not change.
 *
 * @param deflectionMm abscissa
 * @param loadN ordinate, one for each deflection
 * @param kind how it is drawn
 */
public record PlottedRun(double[] deflectionMm, double[] loadN, Kind kind) {
  /**
   * The run that is being taken or looked at; one that lies beside it; one that was hung by hand.
   */
  public enum Kind {
    CURRENT,
    EARLIER,
    SECOND,
    HAND_READ
  }

  public PlottedRun {
    if (deflectionMm.length != loadN.length) {
      throw new IllegalArgumentException("every load of a plotted run has its deflection");
    }
  }
}
