package sagwright.screen.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import sagwright.finish.BlankWood;
import sagwright.finish.Forecast;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.AskGrade;
import sagwright.grade.Order;
import sagwright.grade.Verdict;
import sagwright.grade.WordScale;
import sagwright.job.ChoosingShop;
import sagwright.job.RankBlanks.Ranked;
import sagwright.job.TestedRun;
import sagwright.modulus.BudgetSource;
import sagwright.modulus.Evaluation;
import sagwright.quantity.Figures;
import sagwright.run.Readings;
import sagwright.run.StiffnessFit;
import sagwright.screen.choose.ChooseView.Asked;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.choose.ChooseView.ToCome;
import sagwright.uncertainty.Estimate;

/** Makes what the Choose screen shows of what a workshop answers. */
final class ChooseViews {
  /** A curve of a few hundred points looks the same as one of thousands. */
  private static final int MOST_PLOTTED = 300;

  private static final double MM_PER_INCH = 25.4;

  private ChooseViews() {}

  static Asked asked(ChoosingShop.Choice choice) {
    Order order = choice.ranked().order();
    Ask ask = order.ask();
    List<String> details = new ArrayList<>();
    if (order.species() != null) {
      details.add(order.species());
    }
    details.add(Figures.asTyped(tenths(order.finish().lengthMm() / MM_PER_INCH)) + " in");
    details.add("tip " + Figures.asTyped(tenths(order.finish().diameterAt(0))) + " mm");
    details.add(
        "butt "
            + Figures.asTyped(tenths(order.finish().diameterAt(order.finish().lengthMm())))
            + " mm");
    aim(details, "", ask.massG(), "g");
    aim(details, "balance ", ask.balanceFromButtMm(), "mm");
    return new Asked(
        choice.number(),
        String.join(", ", details),
        "asks "
            + Figures.asTyped(ask.stiffnessNPerMm())
            + " N/mm ± "
            + Figures.asTyped(ask.tolerancePercent())
            + " %",
        ask,
        order.finish(),
        choice.promisedTag());
  }

  private static double tenths(double value) {
    return Math.rint(value * 10) / 10;
  }

  private static void aim(List<String> details, String name, Aim aim, String unit) {
    if (aim != null) {
      String tolerance = aim.tolerance() == null ? "" : " ± " + Figures.asTyped(aim.tolerance());
      details.add(name + Figures.asTyped(aim.value()) + tolerance + " " + unit);
    }
  }

  /** Those that may serve: neither an obstacle nor a verdict stands against them. */
  static List<Row> serving(ChoosingShop.Choice choice) {
    return choice.ranked().blanks().parallelStream()
        .filter(blank -> mayServe(blank, choice))
        .map(blank -> row(blank, null))
        .toList();
  }

  /** All others, each with its reason. */
  static List<Row> cannot(ChoosingShop.Choice choice) {
    List<Row> rows = new ArrayList<>();
    for (Ranked blank : choice.ranked().promisedElsewhere()) {
      rows.add(row(blank, "promised to " + blank.state().promisedTo()));
    }
    for (Ranked blank : choice.ranked().blanks()) {
      if (!mayServe(blank, choice)) {
        rows.add(row(blank, reason(blank, choice)));
      }
    }
    return rows;
  }

  private static boolean mayServe(Ranked blank, ChoosingShop.Choice choice) {
    if (!blank.standing().canServe()) {
      return false;
    }
    Verdict verdict = blank.standing().graded().grade().verdict();
    boolean isTold = verdict == Verdict.SOFTER || verdict == Verdict.STIFFER;
    return !isTold || blank.standing().tag().equals(choice.promisedTag());
  }

  private static String reason(Ranked blank, ChoosingShop.Choice choice) {
    if (!blank.standing().canServe()) {
      return blank.standing().obstacle().inWords();
    }
    AskGrade grade = blank.standing().graded().grade();
    double sureness = choice.sureness().chance();
    return grade.verdict() == Verdict.SOFTER
        ? "softer: "
            + Figures.chancePercent(grade.chanceBelow(), sureness)
            + " in 100 to lie below the ask; no planing stiffens it"
        : "stiffer: "
            + Figures.chancePercent(grade.chanceAbove(), sureness)
            + " in 100 to lie above the ask at this taper";
  }

  private static Row row(Ranked blank, String reason) {
    String tag = blank.standing().tag();
    String stage = blank.state().stage();
    if (blank.standing().graded() == null) {
      return new Row(
          tag, null, "", 0, null, null, ToCome.UNKNOWN, ToCome.UNKNOWN, null, stage, reason);
    }
    AskGrade grade = blank.standing().graded().grade();
    Forecast forecast = blank.standing().graded().forecast();
    Ask ask = grade.ask();
    return new Row(
        tag,
        grade.stiffnessNPerMm(),
        grade.verdict().word(),
        blank.standing().graded().chanceOfAll(),
        modulusMPa(blank),
        forecast.cut(),
        toCome(forecast.massG(), ask.massG()),
        toCome(forecast.balanceFromButtMm(), ask.balanceFromButtMm()),
        blank.standing().candidate().wood().taper(),
        stage,
        reason);
  }

  /** Where it varies along the blank: that of its middle. */
  private static Estimate modulusMPa(Ranked blank) {
    BlankWood wood = blank.standing().candidate().wood();
    double middle = wood.taper().lengthMm() / 2;
    double[][] covariance = wood.modulusMPa().covarianceMPa2();
    int n = wood.modulusMPa().parameterCount();
    double variance = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        variance +=
            wood.modulusMPa().shareOf(i, middle)
                * wood.modulusMPa().shareOf(j, middle)
                * covariance[i][j];
      }
    }
    return new Estimate(wood.modulusMPa().at(middle), Math.sqrt(Math.max(0, variance)));
  }

  private static ToCome toCome(Double value, Aim asked) {
    return new ToCome(value, value != null && asked != null && asked.isMissedBy(value));
  }

  /** The scale's words, where they hold at the ask's set-up. */
  static WordScale words(WordScale scale, Ask ask) {
    return ask.setUp().equals(scale.usual()) ? scale : null;
  }

  static Closely closely(String tag, ChoosingShop.Look look) {
    if (look.latest().isEmpty()) {
      return nothing(tag, look.note());
    }
    TestedRun run = look.latest().get();
    Evaluation evaluation = run.evaluation();
    double[][] curve = loading(run.readings(), evaluation.fit());
    String mostly =
        evaluation.budget().combined() > 0
            ? BudgetSource.inWords(evaluation.budget().greatestFirst().get(0).source())
            : "";
    return new Closely(
        tag,
        curve[0],
        curve[1],
        evaluation.shaftStiffnessNPerMm(),
        mostly,
        look.moisturePercent(),
        look.note());
  }

  /** Where there is no run to be looked at. */
  static Closely nothing(String tag, String note) {
    return new Closely(tag, new double[0], new double[0], Double.NaN, "", null, note);
  }

  /** The loading branch, from the rest to the greatest load: deflections, loads. */
  private static double[][] loading(Readings readings, StiffnessFit fit) {
    double[] loadN = readings.loadN();
    int last = 0;
    for (int i = 1; i < loadN.length; i++) {
      last = loadN[i] > loadN[last] ? i : last;
    }
    int step = 1 + last / MOST_PLOTTED;
    int end = last;
    int[] at = IntStream.rangeClosed(0, end).filter(i -> i % step == 0 || i == end).toArray();
    return new double[][] {
      IntStream.of(at)
          .mapToDouble(i -> readings.deflectionMm()[i] - fit.restDeflectionMm())
          .toArray(),
      IntStream.of(at).mapToDouble(i -> loadN[i] - fit.restLoadN()).toArray()
    };
  }

  /** How an order stands among the open ones. */
  static String place(List<String> open, String number) {
    int at = open.indexOf(number);
    if (at < 0) {
      return open.size() + (open.size() == 1 ? " order is open" : " orders are open");
    }
    return String.format(Locale.ROOT, "open order %d of %d", at + 1, open.size());
  }
}
