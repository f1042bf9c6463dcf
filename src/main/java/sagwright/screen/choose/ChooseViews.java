package sagwright.screen.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.finish.BlankWood;
import sagwright.finish.Forecast;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.AskGrade;
import sagwright.grade.Order;
import sagwright.grade.Verdict;
import sagwright.grade.WordScale;
import sagwright.job.BowWarning;
import sagwright.job.ChoosingShop;
import sagwright.job.RankBlanks.Ranked;
import sagwright.quantity.Figures;
import sagwright.screen.ShopUnits;
import sagwright.screen.WoodWords;
import sagwright.screen.choose.ChooseView.Asked;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.choose.ChooseView.Seen;
import sagwright.screen.choose.ChooseView.ToCome;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;
import sagwright.wood.Seasoning;

/** Makes what the Choose screen shows of what a workshop answers. */
final class ChooseViews {
  private static final double MM_PER_INCH = 25.4;

  /** What is ready so soon may as well be chosen now. Ours, no source. */
  private static final double LONGEST_WAIT_DAYS = 7;

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
        "asks " + asks(ask),
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
  static List<Row> serving(ChoosingShop.Choice choice, ShopUnits units) {
    return choice.ranked().blanks().parallelStream()
        .filter(blank -> mayServe(blank, choice))
        .map(blank -> row(blank, choice, units, null))
        .toList();
  }

  /** All others, each with its reason. */
  static List<Row> cannot(ChoosingShop.Choice choice, ShopUnits units) {
    List<Row> rows = new ArrayList<>();
    for (Ranked blank : choice.ranked().promisedElsewhere()) {
      rows.add(row(blank, choice, units, "promised to " + blank.state().promisedTo()));
    }
    for (Ranked blank : choice.ranked().blanks()) {
      if (!mayServe(blank, choice)) {
        rows.add(row(blank, choice, units, reason(blank, choice)));
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
    boolean isPromisedHere = blank.standing().tag().equals(choice.promisedTag());
    return isPromisedHere || !(isTold || isLongDrying(choice.wood().seasoning(blank.blank())));
  }

  /** What is ready within the wait stands among the others, and its days beside it. */
  private static boolean isLongDrying(Seasoning seasoning) {
    return seasoning.state() == Seasoning.State.DRYING
        && !(seasoning.daysMore() <= LONGEST_WAIT_DAYS);
  }

  private static String reason(Ranked blank, ChoosingShop.Choice choice) {
    if (!blank.standing().canServe()) {
      return blank.standing().obstacle().inWords();
    }
    AskGrade grade = blank.standing().graded().grade();
    double sureness = choice.sureness().chance();
    if (grade.verdict() != Verdict.SOFTER && grade.verdict() != Verdict.STIFFER) {
      return "still drying: " + WoodWords.drying(choice.wood().seasoning(blank.blank()));
    }
    return grade.verdict() == Verdict.SOFTER
        ? "softer: "
            + Figures.chancePercent(grade.chanceBelow(), sureness)
            + " in 100 to lie below the ask; no planing stiffens it"
        : "stiffer: "
            + Figures.chancePercent(grade.chanceAbove(), sureness)
            + " in 100 to lie above the ask at this taper";
  }

  private static Row row(Ranked blank, ChoosingShop.Choice choice, ShopUnits units, String reason) {
    Seasoning seasoning = choice.wood().seasoning(blank.blank());
    Seen seen =
        new Seen(
            WoodWords.grainBriefly(choice.wood().grain(blank.blank()), units),
            WoodWords.seasoning(seasoning),
            WoodWords.seasoningWhole(seasoning));
    String tag = blank.standing().tag();
    String stage = blank.state().stage();
    if (blank.standing().graded() == null) {
      return new Row(
          tag,
          null,
          "",
          0,
          null,
          null,
          ToCome.UNKNOWN,
          ToCome.UNKNOWN,
          null,
          stage,
          seen,
          List.of(),
          reason);
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
        seen,
        warnings(blank),
        reason);
  }

  /** Of the runs, and of the shape; weight and balance are told in their own columns. */
  private static List<String> warnings(Ranked blank) {
    List<Warning> all = new ArrayList<>();
    if (blank.wood() != null) {
      all.addAll(blank.wood().warnings());
    }
    blank.standing().graded().warnings().stream()
        .filter(warning -> warning instanceof BowWarning)
        .forEach(all::add);
    return all.stream().map(Warning::inWords).toList();
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

  static String asks(Ask ask) {
    return Figures.asAsked(ask.stiffnessNPerMm())
        + " N/mm ± "
        + Figures.asTyped(ask.tolerancePercent())
        + " %";
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
