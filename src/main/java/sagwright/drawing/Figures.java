package sagwright.drawing;

import java.util.Locale;

/**
 * Numbers as they are drawn: point as decimal sign, a true minus, padded with figure spaces so that
 * a cell keeps its width while the value changes.
 */
public final class Figures {
  private static final char FIGURE_SPACE = '\u2007';
  private static final char MINUS = '\u2212';
  private static final String NO_VALUE = "\u2013";

  private Figures() {}

  /** A value with fixed decimals; a dash where it is not a number; never "−0.00". */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return NO_VALUE;
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    if (text.charAt(0) != '-') {
      return text;
    }
    String digits = text.substring(1);
    return digits.matches("[0.]*") ? digits : MINUS + digits;
  }

  /** The same, padded on the left to a number of characters. */
  public static String padded(double value, int decimals, int characters) {
    StringBuilder text = new StringBuilder(fixed(value, decimals));
    while (text.length() < characters) {
      text.insert(0, FIGURE_SPACE);
    }
    return text.toString();
  }

  /**
   * Decimals that a half width allows: two digits of it where they begin with less than 3.5, else
   * one (the rule of the Particle Data Group's Review, "Rounding", at 95 % here); 0 to 4.
   */
  public static int decimalsFor(double halfWidth) {
    if (!(halfWidth > 0) || !Double.isFinite(halfWidth)) {
      return 3;
    }
    int power = (int) Math.floor(Math.log10(halfWidth));
    double leading = halfWidth / Math.pow(10, power);
    int decimals = leading < 3.55 || leading >= 9.5 ? 1 - power : -power;
    if (leading >= 9.5) {
      decimals--;
    }
    return Math.max(0, Math.min(4, decimals));
  }

  /** A step of 1, 2 or 5 times a power of ten: the smallest not below the one asked for. */
  public static double niceStep(double atLeast) {
    double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= atLeast * (1 - 1e-9)) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  /** Decimals that a step needs to be written out. */
  public static int decimalsOfStep(double step) {
    return Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
  }

  /** So many figure spaces. */
  public static String space(int characters) {
    return String.valueOf(FIGURE_SPACE).repeat(Math.max(0, characters));
  }

  /**
   * A chance in words, as "99 in 100"; never rounded across the sureness that the shop asks for, and
   * never to none or all.
   */
  public static String inHundred(double chance, double sureness) {
    if (chance > 0.995) {
      return "over 99 in 100";
    }
    if (chance < 0.005) {
      return "under 1 in 100";
    }
    double hundred = chance * 100;
    long rounded = Math.round(hundred);
    if (chance < sureness && rounded >= sureness * 100) {
      rounded = (long) Math.ceil(sureness * 100) - 1;
    }
    return Math.max(1, rounded) + " in 100";
  }
}
