package sagwright.grade;

import java.util.Locale;
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
    return String.format(
        Locale.ROOT,
        "%s %.1f %s lies outside %s ± %s",
        what,
        figure,
        unit,
        plain(asked.value()),
        plain(asked.tolerance()));
  }

  private static String plain(double figure) {
    return figure == Math.rint(figure)
        ? String.format(Locale.ROOT, "%.0f", figure)
        : Double.toString(figure);
  }
}
