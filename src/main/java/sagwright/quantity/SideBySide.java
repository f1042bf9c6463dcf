package sagwright.quantity;

/**
 * A length or a mass in the two systems that the trade speaks, "1473.2 mm · 58.00 in", as fine as
 * it can be planed or weighed.
 */
public final class SideBySide {
  /** Below this a length is a diameter, and is told ten times as finely. */
  private static final double LARGEST_DIAMETER_MM = 100;

  private SideBySide() {}

  public static String length(double mm) {
    int finer = Math.abs(mm) < LARGEST_DIAMETER_MM ? 1 : 0;
    return Unit.MILLIMETRE.text(mm, 1 + finer) + " · " + Unit.INCH.text(mm, 2 + finer);
  }

  public static String mass(double g) {
    return Unit.GRAM.text(g, 0) + " · " + Unit.OUNCE.text(g, 2);
  }
}
