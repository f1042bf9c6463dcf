package sagwright.modulus;

import java.util.Locale;
import sagwright.beam.FlexibilityGradient;
import sagwright.uncertainty.Contribution;

/**
 * What to do about a modulus's greatest source of uncertainty.
 *
 * @param source of {@link BudgetSource}
 * @param share of the variance that the advice could take away, 0 to 1
 * @param nearMm where along the shaft; NaN where it has no place
 */
public record BudgetAdvice(String source, double share, double nearMm) {
  /** Diameters that make up this much of all diameters' own errors are worth a second reading. */
  private static final double WORTH_NAMING = 0.5;

  /**
   * @param evaluation of that test
   */
  public static BudgetAdvice of(BendTest test, Evaluation evaluation) {
    Contribution greatest = evaluation.budget().greatestFirst().get(0);
    double share = evaluation.budget().shareOf(greatest.source());
    if (!greatest.source().equals(BudgetSource.DIAMETER) || test.shaft().splice() != null) {
      return new BudgetAdvice(greatest.source(), share, Double.NaN);
    }
    return ofDiameters(test, evaluation, share);
  }

  private static BudgetAdvice ofDiameters(BendTest test, Evaluation evaluation, double share) {
    double[] own = ownVariances(test, evaluation);
    double sum = 0;
    for (double v : own) {
      sum += v;
    }
    double total = Math.pow(evaluation.modulusStdUncertaintyMPa(), 2);
    if (sum / total < share / 2) {
      return new BudgetAdvice(BudgetSource.DIAMETER, share - sum / total, Double.NaN);
    }
    int n = own.length;
    for (int count = 1; count <= n; count++) {
      double best = 0;
      double place = 0;
      for (int from = 0; from + count <= n; from++) {
        double here = 0;
        double moment = 0;
        for (int i = from; i < from + count; i++) {
          here += own[i];
          moment += own[i] * test.shaft().taper().stationXMm(i);
        }
        if (here > best) {
          best = here;
          place = moment / here;
        }
      }
      if (best >= WORTH_NAMING * sum) {
        return new BudgetAdvice(BudgetSource.DIAMETER, best / total, place);
      }
    }
    return new BudgetAdvice(BudgetSource.DIAMETER, share, Double.NaN);
  }

  /** What each station's own caliper errors add to the modulus's variance, MPa². */
  private static double[] ownVariances(BendTest test, Evaluation evaluation) {
    Shaft shaft = test.shaft();
    double r = test.ratio().value();
    FlexibilityGradient gradient = FlexibilityGradient.of(shaft.taper(), test.setUp().positions());
    double perMm = evaluation.modulusMPa() / gradient.flexibility().perMm(r);
    double u = shaft.diameterUncertaintyMm();
    double ownShare = 1 - shaft.diameterCommonShare();
    double[] own = new double[shaft.taper().stationCount()];
    for (int i = 0; i < own.length; i++) {
      double depth = perMm * gradient.byDepth(i, r);
      double width = perMm * gradient.byWidth(i, r);
      double squares =
          shaft.widthMeasured()[i]
              ? depth * depth + width * width
              : (depth + width) * (depth + width);
      own[i] = ownShare * u * u * squares;
    }
    return own;
  }

  /** One sentence for people, without a full stop. */
  public String inWords() {
    return switch (source) {
      case BudgetSource.DIAMETER -> ofDiametersInWords();
      case BudgetSource.LINE ->
          "test again: the scatter of the readings is " + worth() + ", and goes with more runs";
      case BudgetSource.LOAD_SCALE ->
          "calibrate the load cell with better known masses: its scale is " + worth();
      case BudgetSource.GAUGE_SCALE ->
          "calibrate the gauge with better known lengths: its scale is " + worth();
      case BudgetSource.FRAME -> "measure the give of the frame again: it is " + worth();
      case BudgetSource.RATIO ->
          "test on a longer span, which feels less of E/G: that ratio is " + worth();
      case BudgetSource.SUPPORT_A, BudgetSource.SUPPORT_B, BudgetSource.LOAD, BudgetSource.GAUGE ->
          "measure again where it stands on the bed: "
              + BudgetSource.inWords(source)
              + " is "
              + worth();
      default -> BudgetSource.inWords(source) + ": " + worth();
    };
  }

  private String ofDiametersInWords() {
    if (Double.isNaN(nearMm)) {
      return "check the calipers on a gauge block: what they read wrong everywhere alike is "
          + worth();
    }
    return String.format(
        Locale.ROOT,
        "measure the diameters near %.0f mm again: they are worth %s",
        10 * Math.rint(nearMm / 10),
        worth());
  }

  /** "half of it" or "37 % of it", the squares of uncertainties counted, as they add up. */
  private String worth() {
    double percent = 100 * share;
    return percent > 45 && percent < 55
        ? "half of it"
        : String.format(Locale.ROOT, "%.0f %% of it", percent);
  }
}
