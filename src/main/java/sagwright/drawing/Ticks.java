package sagwright.drawing;

/** Steps between the figures of an axis. */
final class Ticks {
  private Ticks() {}

  /** A step of 1, 2 or 5 times a power of ten: the smallest not below the one asked for. */
  static double step(double atLeast) {
    double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= atLeast * (1 - 1e-9)) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  /** Decimals that a step needs to be written out. */
  static int decimals(double step) {
    return Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
  }
}
