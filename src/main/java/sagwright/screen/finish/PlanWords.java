package sagwright.screen.finish;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SetUp;
import sagwright.finish.Cut;
import sagwright.finish.Forecast;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.AskGrade;
import sagwright.grade.GradedForecast;
import sagwright.grade.PlaningStep;
import sagwright.job.PlannedFinish;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ShopUnits;
import sagwright.uncertainty.Estimate;

/** What a planned finish says in words and figures. */
public final class PlanWords {
  /** Below this a splice changes nothing that a hand feels, as a share. */
  private static final double HARDLY = 0.0005;

  private PlanWords() {}

  /** In which blank the plan lies, and why in that one. */
  static String where(PlannedFinish finish) {
    PlannedFinish.InBlank in = finish.blank();
    if (in == null) {
      return "no tested blank of the rack can serve it";
    }
    if (in.why() == PlannedFinish.Why.BEST && finish.tags().size() > 1) {
      return "in " + in.tag() + ": best of " + finish.tags().size();
    }
    int place = finish.tags().indexOf(in.tag());
    String of = place < 0 ? "" : ", " + (place + 1) + " of " + finish.tags().size();
    return "in " + in.tag() + ": " + in.why().inWords() + of;
  }

  /** What wood the plan wants. */
  public static String wanted(PlannedFinish finish) {
    double from = finish.wanted().softestMPa() / 1000;
    double to = finish.wanted().stiffestMPa() / 1000;
    return Double.isFinite(to) && from > 0
        ? "the ask wants wood of "
            + Figures.rounded(from, 1)
            + " to "
            + Figures.rounded(to, 1)
            + " GPa"
        : "no wood makes this taper as asked";
  }

  static String stiffness(Estimate nPerMm) {
    return Figures.withPlusMinus(nPerMm.value(), nPerMm.halfWidth95());
  }

  /** Weight or balance beside what is asked; empty where nothing is. */
  static String asked(Aim aim, Unit unit) {
    if (aim == null) {
      return "";
    }
    String value = shown(aim.value(), unit);
    return aim.tolerance() == null
        ? "asked " + value
        : "asked " + value + " ± " + shown(aim.tolerance(), unit);
  }

  static String shown(double base, Unit unit) {
    boolean isCoarse = unit == Unit.MILLIMETRE || unit == Unit.GRAM;
    return Figures.rounded(unit.fromBase(base), isCoarse ? 0 : 2);
  }

  /** Cut, spare, frequency and what the splice does, one line. */
  static String details(PlannedFinish finish, ShopUnits units) {
    Forecast forecast = finish.graded().forecast();
    Cut cut = forecast.cut();
    List<String> parts = new ArrayList<>();
    parts.add("cut from " + units.lengthText(cut.fromMm()));
    parts.add(
        cut.fits()
            ? "spare " + Figures.rounded(cut.leastSpareMm(), 2) + " mm"
            : Figures.rounded(-cut.leastSpareMm(), 2) + " mm too thin");
    if (forecast.firstBendingHz() != null) {
      parts.add(Figures.rounded(forecast.firstBendingHz(), 1) + " Hz");
    }
    return String.join(", ", parts);
  }

  /** What the splice does to each stiffness asked, in this wood; empty without one. */
  public static String splice(PlannedFinish finish) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < finish.spliceEffects().size(); i++) {
      double effect = finish.spliceEffects().get(i);
      String at = " at " + span(finish.order().asks().get(i).setUp());
      parts.add((effect < HARDLY ? "hardly anything" : percent(effect)) + at);
    }
    return parts.isEmpty() ? "" : "the splice adds " + String.join(", ", parts);
  }

  private static String span(SetUp setUp) {
    return Figures.rounded(setUp.supportAMm(), 0) + "–" + Figures.rounded(setUp.supportBMm(), 0);
  }

  private static String percent(double share) {
    return Figures.rounded(100 * share, 1) + " %";
  }

  static String chance(double chance, PlannedFinish finish) {
    return Figures.chancePercent(chance, finish.graded().sureness().chance()) + " in 100";
  }

  /** Chance of the ask, or of all of them together. */
  static String chanceOfAll(PlannedFinish finish) {
    return chance(finish.graded().chanceOfAll(), finish) + " " + insideAsked(finish.graded());
  }

  /** What a chance of all that is asked speaks of. */
  public static String insideAsked(GradedForecast graded) {
    int asks = graded.alsoAsked().size() + 1;
    return switch (asks) {
      case 1 -> "inside the ask";
      case 2 -> "inside both asks";
      default -> "inside all " + asks;
    };
  }

  /** One further ask and what comes of it. */
  static String also(PlannedFinish finish, int i) {
    AskGrade also = finish.graded().alsoAsked().get(i);
    return span(also.ask().setUp())
        + ": "
        + Figures.value(also.stiffnessNPerMm().value(), also.stiffnessNPerMm().halfWidth95())
        + ", "
        + also.verdict().word()
        + " "
        + asked(also.ask());
  }

  private static String asked(Ask ask) {
    double half = ask.stiffnessNPerMm() * ask.tolerancePercent() / 100;
    return Figures.value(ask.stiffnessNPerMm(), half)
        + " ± "
        + Figures.asTyped(ask.tolerancePercent())
        + " %";
  }

  /** What one step of planing more or less would do. */
  static String planing(PlannedFinish finish, PlaningStep step, ShopUnits units) {
    GradedForecast graded = step.graded();
    double half = graded.grade().stiffnessNPerMm().halfWidth95();
    StringBuilder words =
        new StringBuilder(Figures.asTyped(Math.abs(step.thickerByMm())))
            .append(step.thickerByMm() > 0 ? " mm thicker: " : " mm thinner: ")
            .append(Figures.value(graded.grade().stiffnessNPerMm().value(), half))
            .append(" N/mm (")
            .append(
                signed(
                    step.stiffnessChangeNPerMm(),
                    half > 0 ? Math.max(2, Figures.decimals(half)) : 3))
            .append(')');
    if (step.massChangeG() != null) {
      Unit unit = units.mass();
      words
          .append(", ")
          .append(signed(unit.fromBase(step.massChangeG()), unit == Unit.GRAM ? 1 : 2))
          .append(' ')
          .append(unit.symbol());
    }
    words.append(", ").append(chance(graded.chanceOfAll(), finish));
    return graded.forecast().fits() ? words.toString() : words + ", does not fit";
  }

  private static String signed(double value, int decimals) {
    return (value > 0 ? "+" : "") + Figures.rounded(value, decimals);
  }
}
