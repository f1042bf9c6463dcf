package sagwright.grade;

import sagwright.uncertainty.Warning;

/** What a grade, which speaks of stiffness alone, does not say. */
public sealed interface GradeWarning extends Warning {
  /** The forecast mass lies outside the tolerance asked. */
  record MassOutside(double massG, Aim asked) implements GradeWarning {
    @Override
    public String inWords() {
      return words("mass", massG, asked, "g");
    }
  }

  /** The forecast balance lies outside the tolerance asked. */
  record BalanceOutside(double balanceFromButtMm, Aim asked) implements GradeWarning {
    @Override
    public String inWords() {
      return words("balance", balanceFromButtMm, asked, "mm from the butt");
    }
  }

  private static String words(String what, double figure, Aim asked, String unit) {
    return what
        + " "
        + toTenths(figure)
        + " "
        + unit
        + " lies outside "
        + plain(asked.value())
        + " ± "
        + plain(asked.tolerance());
  }

  private static String plain(double figure) {
    return figure == Math.rint(figure) && Math.abs(figure) < 1e15
        ? Long.toString((long) figure)
        : Double.toString(figure);
  }

  /** By hand: a rack of ten thousand has a warning or two a blank. */
  private static String toTenths(double figure) {
    long tenths = Math.round(Math.abs(figure) * 10);
    return (figure < 0 && tenths > 0 ? "-" : "") + tenths / 10 + "." + tenths % 10;
  }
}
