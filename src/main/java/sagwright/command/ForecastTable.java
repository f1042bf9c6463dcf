package sagwright.command;

import java.util.Locale;
import sagwright.finish.Forecast;
import sagwright.grade.AskGrade;
import sagwright.grade.GradedForecast;
import sagwright.grade.Sureness;
import sagwright.quantity.Figures;
import sagwright.uncertainty.Warning;

/** The answer of forecast and grade as a person reads it; every ± is 95 %. */
final class ForecastTable {
  private ForecastTable() {}

  static String of(String tag, GradedForecast graded) {
    TextTable table = new TextTable();
    String order = graded.order().number();
    table.title(
        (tag == null ? "untagged shaft" : tag) + (order == null ? "" : " for " + order),
        "± is 95 %");
    row(table, graded.grade(), graded.sureness());
    for (AskGrade also : graded.alsoAsked()) {
      row(table, also, graded.sureness());
    }
    if (!graded.alsoAsked().isEmpty()) {
      table.row("all of these", chance(graded.chanceOfAll(), graded.sureness()), "in 100");
    }
    Forecast forecast = graded.forecast();
    table.row("weight", orDash(forecast.massG(), 1), "g");
    table.row("balance from the butt", orDash(forecast.balanceFromButtMm(), 0), "mm");
    table.row("first bending frequency", orDash(forecast.firstBendingHz(), 1), "Hz");
    table.note(
        String.format(
            Locale.ROOT,
            "%s: cut from %.1f mm of the blank, least spare %.2f mm at %.0f mm",
            forecast.fits() ? "fits" : "does not fit",
            forecast.cut().fromMm(),
            forecast.cut().leastSpareMm(),
            forecast.cut().leastSpareAtMm()));
    for (Warning warning : graded.warnings()) {
      table.note("note: " + warning.inWords());
    }
    return table.toString();
  }

  private static void row(TextTable table, AskGrade grade, Sureness sureness) {
    table.row(
        "asked "
            + Figures.asTyped(grade.ask().stiffnessNPerMm())
            + " ± "
            + Figures.asTyped(grade.ask().tolerancePercent())
            + " %",
        Figures.withPlusMinus(
            grade.stiffnessNPerMm().value(), grade.stiffnessNPerMm().halfWidth95()),
        "N/mm  "
            + grade.verdict().word()
            + ", "
            + chance(grade.chanceWithinTolerance(), sureness)
            + " in 100 inside");
  }

  private static String chance(double chance, Sureness sureness) {
    return Figures.chancePercent(chance, sureness.chance());
  }

  private static String orDash(Double value, int decimals) {
    return value == null ? "–" : Figures.rounded(value, decimals);
  }
}
