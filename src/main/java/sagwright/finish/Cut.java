package sagwright.finish;

/**
 * Where the finished round lies in the blank.
 *
 * @param fromMm where the finished tip end lies, from the blank's tip end
 * @param leastSpareMm the smallest value along the cut of the lesser of depth and width less the
 *     finished diameter, below 0 where the round does not fit
 * @param leastSpareAtMm where that is, from the finished tip end; of equal places the one nearest
 *     the tip
 */
public record Cut(double fromMm, double leastSpareMm, double leastSpareAtMm) {
  /** A spare above this, in mm, fits: what is below 0 by rounding alone does. */
  public static final double LEAST_SPARE_THAT_FITS_MM = -1e-9;

  /** What sticks out of a blank by less than this, in mm, does so by rounding alone. */
  static final double ROUNDING_MM = 1e-9;

  public boolean fits() {
    return leastSpareMm >= LEAST_SPARE_THAT_FITS_MM;
  }

  /** How far the round sticks out of the blank's butt end, in mm; 0 where it does not. */
  public double sticksOutMm(double roundLengthMm, double blankLengthMm) {
    double overMm = fromMm + roundLengthMm - blankLengthMm;
    return overMm > ROUNDING_MM ? overMm : 0;
  }
}
