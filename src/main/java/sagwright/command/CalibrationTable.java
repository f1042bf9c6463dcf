package sagwright.command;

import java.util.List;
import sagwright.check.CalibrationTerms;
import sagwright.check.FrameCompliance;
import sagwright.check.LineCalibration;
import sagwright.quantity.Figures;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/** The answer of {@code calibrate} as a person reads it; every ± is 95 %. */
final class CalibrationTable {
  static final Words LOAD = new Words("load", "N", "mN per count", 1e3);
  static final Words GAUGE = new Words("gauge", "mm", "µm per step", 1e3);

  private static final int TERM_DECIMALS = 3;

  private CalibrationTable() {}

  /**
   * @param part its name and unit
   * @param perReading unit of the factor, {@code timesOf} it the part's own unit
   */
  record Words(String part, String unit, String perReading, double timesOf) {}

  static String of(LineCalibration line, Words words) {
    TextTable table = new TextTable();
    table.title(words.part() + " by " + line.residuals().length + " points", "± is 95 %");
    double factor = line.slope() * words.timesOf();
    table.row(
        "factor",
        Figures.withPlusMinus(factor, half95(line) * words.timesOf()),
        words.perReading());
    table.row("about the line", Figures.withPlusMinus(line.residualStd(), 0), words.unit());
    table.row("greatest point", Figures.rounded(line.greatestPoint(), 2), words.unit());
    CalibrationTerms terms = line.terms();
    table.row("greatest error |q|", percent(terms.greatestErrorPercent()), "%");
    table.row("repeatability b", percent(terms.repeatabilityPercent()), "%");
    table.row("reversibility v", percent(terms.reversibilityPercent()), "%");
    table.row("zero left over", percent(terms.zeroReturnPercent()), "%");
    table.note(
        line.forceClass() == null
            ? "keeps no class of ISO 7500-1"
            : "by these terms class " + plain(line.forceClass().number()) + " of ISO 7500-1");
    return table.toString();
  }

  static String of(FrameCompliance frame, List<String> assumed) {
    TextTable table = new TextTable();
    table.title("frame by a bar", "± is 95 %");
    Estimate compliance = frame.complianceMmPerN();
    table.row(
        "it gives",
        Figures.withPlusMinus(compliance.value() * 1000, compliance.halfWidth95() * 1000),
        "µm per N");
    Estimate stiffness = frame.stiffnessNPerMm();
    table.row(
        "stiffness on the bench",
        Figures.withPlusMinus(stiffness.value(), stiffness.halfWidth95()),
        "N/mm");
    if (!assumed.isEmpty()) {
      table.note("assumed: " + String.join(", ", assumed));
    }
    for (Warning warning : frame.warnings()) {
      table.note("note: " + warning.inWords());
    }
    return table.toString();
  }

  private static double half95(LineCalibration line) {
    return new Estimate(line.slope(), line.slopeStdUncertainty()).halfWidth95();
  }

  private static String percent(Double term) {
    return term == null ? "–" : Figures.rounded(term, TERM_DECIMALS);
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Figures.rounded(number, 0) : Figures.rounded(number, 1);
  }
}
