package sagwright.finish;

/**
 * Where the finished round lies in the blank.
 *
 * @param fromMm where the finished tip end lies, from the blank's tip end
 * @param leastSpareMm the smallest value along the cut of the lesser of depth and width less the
 *     finished diameter, below 0 where the round does not fit
 * @param leastSpareAtMm where that is, from the finished tip end; of equal places the one nearest
 *     the tip
 * @param sticksOutMm how far the round sticks out of the blank's butt end, 0 where it does not
 */
public record Cut(double fromMm, double leastSpareMm, double leastSpareAtMm, double sticksOutMm) {
  /** A spare above this, in mm, fits: what is below 0 by rounding alone does. */
  public static final double LEAST_SPARE_THAT_FITS_MM = -1e-9;

  public boolean fits() {
    return leastSpareMm >= LEAST_SPARE_THAT_FITS_MM;
  }
}
