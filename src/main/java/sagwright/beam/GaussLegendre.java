package sagwright.beam;

/**
 * The 8-point Gauss–Legendre rule on pieces whose diameter ratio stays below {@link #MOST_RATIO}.
 *
 * <p>The integrands are rational with their poles where a diameter would run out to 0. On a piece
 * of ratio R the nearest pole lies at z = (R+1)/(R−1) in the rule's own coordinate; the error falls
 * as ρ^−2n with ρ = z + √(z²−1) (Davis and Rabinowitz, Methods of Numerical Integration, 4.6). R =
 * 1.4 gives ρ = 11.9 and ρ^−16 = 6e−18: exact to rounding.
 */
final class GaussLegendre {
  static final int POINTS = 8;
  static final double MOST_RATIO = 1.4;

  /** Nodes on −1 … 1 (Abramowitz and Stegun, table 25.4, n = 8). */
  static final double[] NODES = {
    -0.9602898564975363, -0.7966664774136267, -0.5255324099163290, -0.1834346424956498,
    0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
  };

  static final double[] WEIGHTS = {
    0.1012285362903763, 0.2223810344533745, 0.3137066458778873, 0.3626837833783620,
    0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
  };

  private GaussLegendre() {}

  /** Into how many parts a piece is cut so that every part's diameter ratio stays small enough. */
  static int parts(double diameterFrom, double diameterTo) {
    double ratio = ratio(diameterFrom, diameterTo);
    return ratio <= MOST_RATIO ? 1 : (int) Math.ceil(Math.log(ratio) / Math.log(MOST_RATIO));
  }

  /** The greater of two diameters over the lesser. */
  static double ratio(double a, double b) {
    return a > b ? a / b : b / a;
  }
}
