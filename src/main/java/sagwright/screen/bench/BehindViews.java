package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import sagwright.drawing.SeriesBars;
import sagwright.job.BenchShop;
import sagwright.job.RunsTogether;
import sagwright.job.SecondOpinion;
import sagwright.job.TestedRun;
import sagwright.job.WoodInTheYear;
import sagwright.modulus.BudgetAdvice;
import sagwright.modulus.BudgetSource;
import sagwright.modulus.Evaluation;
import sagwright.quantity.Figures;
import sagwright.uncertainty.Contribution;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.GrubbsTest;
import sagwright.uncertainty.Interval;
import sagwright.wood.TemperatureEffect;

/** Puts what stands behind an answer's ± into words. */
final class BehindViews {
  private static final String NONE = "–";

  private final BenchShop shop;

  BehindViews(BenchShop shop) {
    this.shop = shop;
  }

  /**
   * @param shown the run whose budget is shown
   * @param opinion null where none was asked for yet
   */
  BehindView of(RunsTogether together, TestedRun shown, SecondOpinion opinion) {
    Evaluation e = shown.evaluation();
    return new BehindView(
        "of the run shown",
        bars(e),
        together(together, e),
        BudgetAdvice.of(shown.bendTest(), e).inWords(),
        opinion == null ? "random draws: being drawn …" : inWords(opinion),
        woods(shop.wood(together), together.modulusMPa()),
        turns(together),
        AssumedWords.of(shown.assumed()));
  }

  private static List<SeriesBars.Bar> bars(Evaluation e) {
    List<SeriesBars.Bar> bars = new ArrayList<>();
    for (Contribution c : e.budget().greatestFirst()) {
      if (c.standardUncertainty() > 0) {
        double percent = 100 * e.budget().shareOf(c.source());
        bars.add(
            new SeriesBars.Bar(
                BudgetSource.inWords(c.source()),
                c.standardUncertainty(),
                Figures.rounded(percent, 0) + " %"));
      }
    }
    return bars;
  }

  private static String together(RunsTogether together, Evaluation e) {
    double one = e.modulusStdUncertaintyMPa();
    String words = "together " + Figures.value(one, one) + " MPa, a standard uncertainty";
    if (together.series() == null) {
      return words;
    }
    double all = together.modulusMPa().standardUncertainty();
    return words
        + "; the "
        + together.repeats().size()
        + " runs together "
        + Figures.value(all, all)
        + " MPa: what is common to them does not go with their number";
  }

  private static String inWords(SecondOpinion opinion) {
    Interval drawn = opinion.draws().interval95();
    String interval =
        String.format(
            Locale.ROOT,
            "%,d random draws put 95 %% between %.2f and %.2f GPa: ",
            opinion.draws().draws(),
            drawn.low() / 1000,
            drawn.high() / 1000);
    if (!opinion.draws().settled()) {
      return interval + "they had not settled, so that they cannot judge the budget.";
    }
    double off = Math.max(opinion.check().lowDifference(), opinion.check().highDifference());
    return interval
        + (opinion.check().agrees() ? "the budget agrees with them" : "the budget does NOT agree")
        + String.format(
            Locale.ROOT,
            " (ends %.0f MPa apart, %.0f are allowed; JCGM 101, section 8).",
            off,
            opinion.check().tolerance());
  }

  private static List<BehindView.Wood> woods(WoodInTheYear wood, Estimate modulusMPa) {
    List<BehindView.Wood> rows = new ArrayList<>();
    boolean known = wood.moisturePercent() != null;
    double relative = modulusMPa.halfWidth95() / modulusMPa.value();
    rows.add(
        new BehindView.Wood(
            known
                ? "as tested, " + Figures.rounded(wood.moisturePercent(), 1) + " %"
                : "as tested, moisture not measured",
            gpa(wood.modulusMPa(), relative),
            kgM3(wood.densityKgM3())));
    rows.add(
        new BehindView.Wood(
            "at 12 %", gpa(wood.modulusAt12MPa(), relative), kgM3(wood.densityAt12KgM3())));
    rows.add(
        new BehindView.Wood(
            "dry winter, " + Figures.rounded(wood.year().dryWinterMoisturePercent(), 1) + " %",
            gpa(wood.year().dryWinterMPa(), relative),
            ""));
    rows.add(
        new BehindView.Wood(
            "damp summer, " + Figures.rounded(wood.year().dampSummerMoisturePercent(), 1) + " %",
            gpa(wood.year().dampSummerMPa(), relative),
            ""));
    rows.add(
        new BehindView.Wood(
            "10 °C warmer than at the test",
            gpa(wood.modulusMPa() * (1 + TemperatureEffect.percentPer10C() / 100), relative),
            ""));
    return rows;
  }

  private static String gpa(Double modulusMPa, double relativeHalfWidth) {
    return modulusMPa == null
        ? NONE
        : Figures.withPlusMinus(modulusMPa / 1000, modulusMPa * relativeHalfWidth / 1000);
  }

  private static String kgM3(Double density) {
    return density == null ? NONE : Figures.rounded(density, 0);
  }

  private static List<String> turns(RunsTogether together) {
    List<String> words = new ArrayList<>();
    if (together.series() == null) {
      words.add("one run at this set-up: a series of three shows how well it repeats");
      return words;
    }
    words.add(TurnWords.agreement(together));
    words.addAll(TurnWords.ways(together.series()));
    OptionalInt out = TurnWords.numberStandingOut(together);
    if (out.isPresent()) {
      words.add(
          "run "
              + out.getAsInt()
              + " stands out: "
              + together.whyItStandsOut(together.standingOut().get(0)));
    } else {
      words.add("no run stands out: " + outlierTest(together.repeats().size()));
    }
    together.warnings().forEach(w -> words.add(w.inWords()));
    return words;
  }

  private static String outlierTest(int runs) {
    return runs < 3
        ? "with two runs none can be told"
        : "each within the 1 % limit of its stated uncertainty (Bonferroni)"
            + (runs >= GrubbsTest.LEAST_VALUES_TO_SEE ? ", or by Grubbs' test at 5 %" : "");
  }
}
