package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import sagwright.job.RunsTogether;
import sagwright.job.TestedRun;
import sagwright.quantity.Figures;
import sagwright.survey.SeriesAnswer;
import sagwright.survey.TurnEffect;
import sagwright.uncertainty.Estimate;

/** How the runs at different turns agree, and which way is stiffer. */
final class TurnWords {
  private TurnWords() {}

  /** Few words for under the butt end; empty for a single run. */
  static String of(RunsTogether together) {
    if (together == null || together.series() == null) {
      return "";
    }
    OptionalInt out = numberStandingOut(together);
    if (out.isPresent()) {
      return "run " + out.getAsInt() + " stands out: see W";
    }
    SeriesAnswer series = together.series();
    if (series.stiffness() != null && series.stiffness().isSignificant()) {
      return String.format(
          Locale.ROOT,
          "stiffer at %.0f° ± %.0f°, by %.1f %%",
          series.stiffness().stifferDegrees(),
          Estimate.COVERAGE_FACTOR_95 * series.stiffness().stifferStdUncertaintyDegrees(),
          series.stiffness().amplitudePercent());
    }
    return agreement(together);
  }

  /** "all agree within 0.3 %", never within less than 0.1 %. */
  static String agreement(RunsTogether together) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (TestedRun run : together.repeats()) {
      double stiffness = run.evaluation().shaftStiffnessNPerMm();
      least = Math.min(least, stiffness);
      most = Math.max(most, stiffness);
    }
    double percent = Math.max(0.1, 100 * (most - least) / least);
    return "all agree within " + Figures.rounded(percent, 1) + " %";
  }

  /** What out-of-round explains, what the grain does, which way to mark: a sentence each. */
  static List<String> ways(SeriesAnswer series) {
    List<String> words = new ArrayList<>();
    words.add(
        series.shape().isSignificant()
            ? "out-of-round, by the calipers, makes it stiffer " + way(series.shape())
            : "it is round, by the calipers: out-of-round explains nothing");
    if (series.grain() == null) {
      words.add("three unlike turns or more would tell what the grain does");
    } else if (series.grain().isSignificant()) {
      words.add("the grain makes it stiffer " + way(series.grain()));
    } else {
      words.add(
          String.format(
              Locale.ROOT,
              "the grain does no more than the runs scatter (%.1f %% ± %.1f %%)",
              series.grain().amplitudePercent(),
              Estimate.COVERAGE_FACTOR_95 * series.grain().amplitudeStdUncertaintyPercent()));
    }
    if (series.stifferWay().isSignificant()) {
      words.add(
          String.format(
              Locale.ROOT,
              "mark the stiffer way: turned to %.0f°, 0° being the mark up",
              series.stifferWay().stifferDegrees()));
    }
    if (series.repeatabilityMPa() != null) {
      words.add(
          String.format(
              Locale.ROOT,
              "one run repeats to %.0f MPa, a standard deviation with %d degree%s of freedom",
              series.repeatabilityMPa(),
              series.degreesOfFreedom(),
              series.degreesOfFreedom() == 1 ? "" : "s"));
    }
    return words;
  }

  private static String way(TurnEffect effect) {
    return String.format(
        Locale.ROOT,
        "by %.1f %% ± %.1f %% at %.0f°",
        effect.amplitudePercent(),
        Estimate.COVERAGE_FACTOR_95 * effect.amplitudeStdUncertaintyPercent(),
        effect.stifferDegrees());
  }

  /** Counted from 1 among the blank's runs; empty where none stands out. */
  static OptionalInt numberStandingOut(RunsTogether together) {
    List<TestedRun> out = together.standingOut();
    return out.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(together.runs().indexOf(out.get(0)) + 1);
  }
}
