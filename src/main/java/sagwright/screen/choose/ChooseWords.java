package sagwright.screen.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.grade.Aim;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ShopUnits;
import sagwright.screen.choose.ChooseView.Cost;
import sagwright.screen.choose.ChooseView.Row;

/** The sentences of the Choose screen. */
final class ChooseWords {
  /** So much of its tolerance off, a figure is still called the asked one. Ours, no source. */
  private static final double AT = 0.25;

  private static final int FINE_DECIMALS = 1;

  private ChooseWords() {}

  /** What to do where there is nothing to choose from; empty where there is. */
  static String nextStep(ChooseView view) {
    if (view.isReading() && view.rowCount() == 0) {
      return "Reading the rack …";
    }
    if (view.order() == null) {
      return "No order is open. Take one on the Orders page, then choose its blank here.";
    }
    if (view.rowCount() == 0) {
      return "No blank of this wood is on the rack. Enter one on the Rack page, then test it.";
    }
    if (view.serving().isEmpty()) {
      return "No blank can serve this yet, for the reasons above. Test another.";
    }
    return "";
  }

  /** Why this one, in one sentence. */
  static String why(ChooseView view, Row lead) {
    if (lead.tag().equals(view.order().promisedTag())) {
      return lead.tag() + " is promised to " + view.order().number() + ".";
    }
    List<String> parts = new ArrayList<>();
    List<String> asAsked = new ArrayList<>();
    List<String> off = new ArrayList<>();
    int place = view.serving().indexOf(lead);
    if (place == 0 && lead.verdict().equals("meets")) {
      parts.add("lies deepest in the ask");
    } else {
      parts.add(
          (place == 0
                  ? "comes nearest to the ask with "
                  : "stands " + ordinal(place + 1) + " with ")
              + Figures.chancePercent(lead.chance(), view.sureness())
              + " in 100");
    }
    ShopUnits units = view.units();
    Aim mass = view.order().ask().massG();
    if (lead.mass().isOff()) {
      double by = lead.mass().value() - mass.value();
      off.add(text(units.mass(), by) + (by > 0 ? " too heavy" : " too light"));
    } else if (isAt(mass, lead.mass())) {
      asAsked.add("weight");
    }
    Aim balance = view.order().ask().balanceFromButtMm();
    if (lead.balance().isOff()) {
      double by = lead.balance().value() - balance.value();
      off.add(
          "balance " + text(units.length(), by) + (by > 0 ? " too far forward" : " too far back"));
    } else if (isAt(balance, lead.balance())) {
      asAsked.add("balance");
    }
    if (!asAsked.isEmpty()) {
      parts.add("is at the asked " + joined(asAsked));
    }
    String but = off.isEmpty() ? "" : ", but " + joined(off);
    return lead.tag() + " " + joined(parts) + but + ".";
  }

  private static boolean isAt(Aim asked, ChooseView.ToCome toCome) {
    return asked != null
        && asked.tolerance() != null
        && toCome.value() != null
        && Math.abs(toCome.value() - asked.value()) <= AT * asked.tolerance();
  }

  private static String text(Unit unit, double by) {
    return unit.text(Math.abs(by), decimals(unit));
  }

  /** g and mm are shown whole, inches and ounces to a tenth. */
  static int decimals(Unit unit) {
    return unit == unit.dimension().base() ? 0 : FINE_DECIMALS;
  }

  private static String joined(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  private static String ordinal(int place) {
    String ending =
        switch (place % 100) {
          case 11, 12, 13 -> "th";
          default ->
              switch (place % 10) {
                case 1 -> "st";
                case 2 -> "nd";
                case 3 -> "rd";
                default -> "th";
              };
        };
    return place + ending;
  }

  /** What a promise would cost the other open orders. */
  static String cost(Cost cost) {
    if (cost == null) {
      return "Working out what a promise would cost the other orders …";
    }
    if (cost.otherOrders() == 0) {
      return "No other order is open: a promise costs none.";
    }
    String others =
        cost.otherOrders() == 1
            ? "the other open order"
            : "the other " + cost.otherOrders() + " open orders";
    double toOthers = cost.cost().toOthers();
    if (toOthers < 0.005) {
      return "A promise costs " + others + " nothing.";
    }
    return String.format(
        Locale.ROOT,
        "A promise costs %s: %.2f to be met with it free, %.2f without.",
        others,
        cost.cost().othersWith(),
        cost.cost().othersWithout());
  }

  /** One row, read out. */
  static String row(ChooseView view, int place, List<String> picked) {
    Row row = view.row(place);
    String number = view.order().number() + ", ";
    if (row.reason() != null) {
      return number + row.tag() + " cannot serve: " + row.reason() + ".";
    }
    String stiffness =
        Figures.withPlusMinus(row.stiffnessNPerMm().value(), row.stiffnessNPerMm().halfWidth95());
    int pick = picked.indexOf(row.tag());
    return number
        + (place + 1)
        + " of "
        + view.serving().size()
        + ": "
        + row.tag()
        + (pick < 0 ? "" : ", pick " + (pick + 1))
        + (row.tag().equals(view.order().promisedTag()) ? ", promised" : "")
        + ", "
        + row.verdict()
        + ", "
        + Figures.chancePercent(row.chance(), view.sureness())
        + " in 100, "
        + stiffness
        + " N/mm, spare "
        + Figures.rounded(row.cut().leastSpareMm(), 2)
        + " mm.";
  }
}
