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
   * The run that is being taken or looked at; one that lies beside it; one that was hung by hand;
   * those of shafts that are compared, each in its own {@link PickLine}.
   */
  public enum Kind {
    CURRENT,
    EARLIER,
    SECOND,
    HAND_READ,
    PICK_1,
    PICK_2,
    PICK_3,
    PICK_4;

    /** The kind of a pick by its place, 0 for the first. */
    public static Kind pick(int place) {
      return values()[PICK_1.ordinal() + place];
    }

    PickLine pickLine() {
      return PickLine.of(ordinal() - PICK_1.ordinal());
    }
  }

  public PlottedRun {
    if (deflectionMm.length != loadN.length) {
      throw new IllegalArgumentException("every load of a plotted run has its deflection");
    }
  }
}
