package sagwright.screen.checks;

import java.util.List;
import java.util.Locale;
import sagwright.check.CalibrationTerms;
import sagwright.check.ForceClass;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.job.CalibrationDrafts.Kind;
import sagwright.quantity.Figures;
import sagwright.uncertainty.Estimate;

/** What the calibrations say, in words. */
final class Words {
  private static final int ROUNDS_WANTED = 3;

  private Words() {}

  /** What to do next. */
  static String step(Kind kind, GuidedPoints taken) {
    boolean isLoad = kind == Kind.LOAD;
    return switch (taken.step()) {
      case FIRST_ZERO ->
          isLoad
              ? "Load it to the greatest three times, let off.  Nothing on the hook: 0, Enter."
              : "Zero the gauge on its plate.  No block under the stem: 0, Enter.";
      case GO_UP ->
          isLoad
              ? "Hang the next mass, type it, wait until the counts stand, Enter."
              : "Lay the next block, type it, wait until the steps stand, Enter.";
      case GO_ON_OR_TURN ->
          taken.roundsDone() == 0
              ? "The next one up; after the greatest down again by the same."
              : "As the round before: up to the greatest, then down again.";
      case GO_DOWN -> "Down again by the same, to nothing.";
      case ROUND_DONE ->
          taken.roundsDone() < ROUNDS_WANTED
              ? "A round is done.  Another tells how well it repeats: nothing on, 0, Enter."
              : "Three rounds are done.  Ctrl Enter keeps it.";
    };
  }

  /** One line of the terms: its name, its figure, what it means. */
  record Term(String name, String figure, String words) {}

  /**
   * @param line null with too few points: no terms then
   */
  static List<Term> terms(LineCalibration line, boolean isLoad) {
    if (line == null) {
      return List.of();
    }
    CalibrationTerms t = line.terms();
    String perStep = isLoad ? "mN a count" : "µm a step";
    double smallest = 1000 * line.residualStd();
    return List.of(
        new Term("error", percent(t.greatestErrorPercent()), "the greatest off the line"),
        new Term(
            "repeatability",
            percent(t.repeatabilityPercent()),
            t.repeatabilityPercent() == null
                ? "a second round tells"
                : "between rounds at the same point"),
        new Term(
            "reversibility",
            percent(t.reversibilityPercent()),
            t.reversibilityPercent() == null
                ? "come down again to know"
                : "coming down against up"),
        new Term(
            "zero",
            percent(t.zeroReturnPercent()),
            t.zeroReturnPercent() == null
                ? "let off to nothing to know"
                : "left over after unloading"),
        inClass(line),
        new Term(
            "factor",
            Figures.value(1000 * line.slope(), 1e-4 * Math.abs(1000 * line.slope())),
            String.format(
                Locale.ROOT,
                "%s ± %.2g %%; a point scatters by %s %s",
                perStep,
                Estimate.COVERAGE_FACTOR_95 * line.scaleUncertaintyPercent(),
                Figures.value(smallest, smallest / 10),
                isLoad ? "mN" : "µm")));
  }

  private static Term inClass(LineCalibration line) {
    ForceClass forceClass = line.forceClass();
    if (forceClass == null) {
      return new Term("class", "none", "beyond class 3 of ISO 7500-1: look what stands out above");
    }
    String number = number(forceClass.number());
    return new Term(
        "class",
        number,
        String.format(
            Locale.ROOT,
            "ISO 7500-1 allows %s, %s, %s, %s %%; all kept",
            number(forceClass.errorLimitPercent()),
            number(forceClass.repeatabilityLimitPercent()),
            number(forceClass.reversibilityLimitPercent()),
            number(forceClass.zeroLimitPercent())));
  }

  private static String number(double value) {
    return Figures.asTyped(value);
  }

  private static String percent(Double value) {
    return value == null ? "–" : Figures.rounded(value, 2) + " %";
  }
}
