package sagwright.modulus;

import sagwright.uncertainty.Estimate;

/**
 * The modulus of a blank's wood along its length, E(x) in MPa over x in mm from the blank's tip
 * end, as a few parameters in MPa that it is linear in, with their covariance.
 *
 * <p>Either straight between knots, one parameter a knot, or constant between borders, one
 * parameter a piece; one modulus for the whole blank is one piece with no border. Beyond the first
 * and the last place the modulus is that of the nearest.
 */
public final class ModulusAlong {
  private final boolean straightBetweenKnots;
  private final double[] placesMm;
  private final double[] moduliMPa;
  private final double[][] covarianceMPa2;

  private ModulusAlong(
      boolean straightBetweenKnots, double[] placesMm, double[] moduliMPa, double[][] covariance) {
    this.straightBetweenKnots = straightBetweenKnots;
    this.placesMm = placesMm.clone();
    this.moduliMPa = moduliMPa.clone();
    this.covarianceMPa2 = copy(covariance);
    if (!isSound()) {
      throw new IllegalArgumentException(
          "places rise, moduli are above 0, and the covariance has a row and a column for each");
    }
  }

  /** In plain loops: thousands of blanks are read at once, mostly of one modulus. */
  private boolean isSound() {
    int n = moduliMPa.length;
    boolean isSound = n > 0 && covarianceMPa2.length == n;
    for (int i = 0; isSound && i < n; i++) {
      isSound = moduliMPa[i] > 0 && covarianceMPa2[i].length == n;
    }
    for (int i = 1; i < placesMm.length; i++) {
      isSound &= placesMm[i] > placesMm[i - 1];
    }
    return isSound;
  }

  private static double[][] copy(double[][] matrix) {
    double[][] copy = new double[matrix.length][];
    for (int i = 0; i < matrix.length; i++) {
      copy[i] = matrix[i].clone();
    }
    return copy;
  }

  /** One modulus for the whole blank. */
  public static ModulusAlong constant(Estimate modulusMPa) {
    double u = modulusMPa.standardUncertainty();
    return new ModulusAlong(
        false, new double[0], new double[] {modulusMPa.value()}, new double[][] {{u * u}});
  }

  /**
   * Straight between knots.
   *
   * @param knotsMm two or more, rising
   * @param moduliMPa one a knot
   */
  public static ModulusAlong straight(
      double[] knotsMm, double[] moduliMPa, double[][] covarianceMPa2) {
    if (knotsMm.length < 2 || knotsMm.length != moduliMPa.length) {
      throw new IllegalArgumentException("two knots or more, a modulus for each");
    }
    return new ModulusAlong(true, knotsMm, moduliMPa, covarianceMPa2);
  }

  /**
   * Constant between borders.
   *
   * @param bordersMm between the pieces, rising: one fewer than there are pieces
   * @param moduliMPa one a piece, from the tip on
   */
  public static ModulusAlong pieces(
      double[] bordersMm, double[] moduliMPa, double[][] covarianceMPa2) {
    if (bordersMm.length != moduliMPa.length - 1) {
      throw new IllegalArgumentException("one border fewer than there are pieces");
    }
    return new ModulusAlong(false, bordersMm, moduliMPa, covarianceMPa2);
  }

  public boolean variesAlong() {
    return moduliMPa.length > 1;
  }

  /** Whether it runs straight between its breaks; else it is constant between them. */
  public boolean isStraightBetweenKnots() {
    return straightBetweenKnots;
  }

  /** The parameters, from the tip on. */
  public double[] moduliMPa() {
    return moduliMPa.clone();
  }

  public int parameterCount() {
    return moduliMPa.length;
  }

  /** Where E(x) has a kink or a step, rising. */
  public double[] breaksMm() {
    return placesMm.clone();
  }

  public double[][] covarianceMPa2() {
    return copy(covarianceMPa2);
  }

  /** E(x) in MPa. */
  public double at(double xMm) {
    double sum = 0;
    for (int i = 0; i < moduliMPa.length; i++) {
      double share = shareOf(i, xMm);
      if (share != 0) {
        sum += share * moduliMPa[i];
      }
    }
    return sum;
  }

  /** ∂E(x)/∂(parameter i), 0 to 1. */
  public double shareOf(int i, double xMm) {
    if (straightBetweenKnots) {
      return hat(i, xMm);
    }
    boolean fromHere = i == 0 || xMm >= placesMm[i - 1];
    boolean toHere = i == moduliMPa.length - 1 || xMm < placesMm[i];
    return fromHere && toHere ? 1 : 0;
  }

  private double hat(int i, double xMm) {
    int last = placesMm.length - 1;
    double x = Math.min(Math.max(xMm, placesMm[0]), placesMm[last]);
    if (i > 0 && x < placesMm[i]) {
      return Math.max(0, (x - placesMm[i - 1]) / (placesMm[i] - placesMm[i - 1]));
    }
    if (i < last && x > placesMm[i]) {
      return Math.max(0, (placesMm[i + 1] - x) / (placesMm[i + 1] - placesMm[i]));
    }
    return 1;
  }
}
