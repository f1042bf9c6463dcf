package sagwright.command;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sagwright.modulus.BudgetSource;
import sagwright.modulus.Evaluation;
import sagwright.modulus.MonteCarlo;
import sagwright.quantity.Figures;
import sagwright.run.StiffnessFit;
import sagwright.sheet.Sheet;
import sagwright.uncertainty.Contribution;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/** The answer of evaluate as a person reads it; every ± is 95 %. */
final class EvaluationTable {
  private EvaluationTable() {}

  static String of(Sheet sheet, Evaluation e) {
    return of(sheet, e, List.of());
  }

  /**
   * @param ofBench what was found amiss while the run was recorded
   */
  static String of(Sheet sheet, Evaluation e, List<Warning> ofBench) {
    TextTable table = new TextTable();
    table.title(sheet.tag() == null ? "untagged shaft" : sheet.tag(), "± is 95 %");
    table.row(
        "stiffness on the bench",
        plusMinus(e.fit().stiffnessNPerMm(), e.stiffnessStdUncertaintyNPerMm()),
        "N/mm");
    table.row(
        "stiffness of the shaft",
        Figures.value(e.shaftStiffnessNPerMm(), half95(e.stiffnessStdUncertaintyNPerMm())),
        "N/mm");
    table.row(
        "modulus", plusMinus(e.modulusMPa() / 1000, e.modulusStdUncertaintyMPa() / 1000), "GPa");
    table.row(
        "modulus at 12 % moisture",
        e.modulusAt12PercentMPa() == null
            ? "–"
            : Figures.value(
                e.modulusAt12PercentMPa() / 1000, half95(e.modulusStdUncertaintyMPa() / 1000)),
        "GPa");
    table.row(
        "density", e.densityKgM3() == null ? "–" : Figures.rounded(e.densityKgM3(), 0), "kg/m³");
    StiffnessFit fit = e.fit();
    table.row("peak bending stress", Figures.rounded(e.peakStressMPa(), 1), "MPa");
    table.row(
        "hysteresis",
        fit.hysteresisPercent() == null ? "–" : Figures.rounded(fit.hysteresisPercent(), 2),
        "%");
    table.note(
        String.format(
            Locale.ROOT,
            "line fitted from %.2f to %.2f N: %d samples used, %d set aside",
            fit.windowFromN(),
            fit.windowToN(),
            fit.samplesUsed(),
            fit.samplesSetAside()));
    Contribution most = e.budget().greatestFirst().get(0);
    table.note(
        String.format(
            Locale.ROOT,
            "what weighs most in the modulus's ±: %s, %.0f %% of the variance",
            BudgetSource.inWords(most.source()),
            100 * e.budget().shareOf(most.source())));
    if (!sheet.assumed().isEmpty()) {
      table.note("assumed: " + String.join(", ", sheet.assumed()));
    }
    Stream.concat(ofBench.stream(), e.warnings().stream())
        .forEach(warning -> table.note("note: " + warning.inWords()));
    return table.toString();
  }

  static String secondOpinion(MonteCarlo second) {
    return String.format(
        Locale.ROOT,
        "  %d Monte Carlo draws: modulus %.0f MPa, 95 %% between %.0f and %.0f MPa%n",
        second.draws(),
        second.modulusMPa(),
        second.low95MPa(),
        second.high95MPa());
  }

  private static String plusMinus(double value, double standardUncertainty) {
    return Figures.withPlusMinus(value, half95(standardUncertainty));
  }

  private static double half95(double standardUncertainty) {
    return Estimate.COVERAGE_FACTOR_95 * standardUncertainty;
  }
}
