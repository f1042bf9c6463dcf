package sagwright.grade;

import java.util.function.DoubleUnaryOperator;

/**
 * An integral by Gauss–Kronrod's 7 and 15 points, halved until the two agree (Kronrod 1965; nodes
 * and weights as in QUADPACK's qk15, Piessens and others 1983).
 */
final class AdaptiveGauss {
  private static final double[] NODES = {
    0.991455371120812639206854697526329,
    0.949107912342758524526189684047851,
    0.864864423359769072789712788640926,
    0.741531185599394439863864773280788,
    0.586087235467691130294144691693013,
    0.405845151377397166906606412076961,
    0.207784955007898467600689403773245
  };

  private static final double[] WEIGHTS = {
    0.022935322010529224963732008058970,
    0.063092092629978553290700663189204,
    0.104790010322250183839876322541518,
    0.140653259715525918745189590510238,
    0.169004726639267902826583426598550,
    0.190350578064785409913256402421014,
    0.204432940075298892414161999234649
  };

  private static final double WEIGHT_AT_MIDDLE = 0.209482141084727828012999174891714;

  /** Of the 7 points, which are every other one of the 15. */
  private static final double[] COARSE_WEIGHTS = {
    0.129484966168869693270611432679082,
    0.279705391489276667901467771423780,
    0.381830050505118944950369775488975
  };

  private static final double COARSE_WEIGHT_AT_MIDDLE = 0.417959183673469387755102040816327;
  private static final int MOST_HALVINGS = 40;

  private final DoubleUnaryOperator integrand;
  private final double tolerance;

  /**
   * @param tolerance absolute, for the whole integral
   */
  AdaptiveGauss(DoubleUnaryOperator integrand, double tolerance) {
    this.integrand = integrand;
    this.tolerance = tolerance;
  }

  double over(double from, double to) {
    return from < to ? over(from, to, tolerance, MOST_HALVINGS) : 0;
  }

  private double over(double from, double to, double allowed, int halvingsLeft) {
    double centre = (from + to) / 2;
    double half = (to - from) / 2;
    double middle = integrand.applyAsDouble(centre);
    double fine = WEIGHT_AT_MIDDLE * middle;
    double coarse = COARSE_WEIGHT_AT_MIDDLE * middle;
    for (int i = 0; i < NODES.length; i++) {
      double both =
          integrand.applyAsDouble(centre - half * NODES[i])
              + integrand.applyAsDouble(centre + half * NODES[i]);
      fine += WEIGHTS[i] * both;
      if (i % 2 == 1) {
        coarse += COARSE_WEIGHTS[i / 2] * both;
      }
    }
    if (halvingsLeft == 0 || half * Math.abs(fine - coarse) <= allowed) {
      return half * fine;
    }
    return over(from, centre, allowed / 2, halvingsLeft - 1)
        + over(centre, to, allowed / 2, halvingsLeft - 1);
  }
}
