package sagwright.screen;

import java.time.Duration;
import java.util.Locale;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.wood.Grain;
import sagwright.wood.Seasoning;

/** Grain and seasoning as the screens say them. */
public final class WoodWords {
  private static final double CM_PER_INCH = 2.54;

  private WoodWords() {}

  /** What grain lines are counted over: an inch where lengths are read in inches, else a cm. */
  public static String per(ShopUnits units) {
    return units.length() == Unit.INCH ? "an inch" : "a cm";
  }

  /** Lines over the shop's length; null where not counted. */
  public static Double lines(Grain grain, ShopUnits units) {
    return grain.linesPerCm() == null ? null : grain.linesPerCm() * perCm(units);
  }

  /** Lines a centimetre from those over the shop's length. */
  public static Double linesPerCm(Double lines, ShopUnits units) {
    return lines == null ? null : lines / perCm(units);
  }

  private static double perCm(ShopUnits units) {
    return units.length() == Unit.INCH ? CM_PER_INCH : 1;
  }

  /** "9, slight run-out"; empty where nobody has looked. */
  public static String grain(Grain grain, ShopUnits units) {
    return grain(grain, units, grain.runOut() == null ? "" : grain.runOut().inWords());
  }

  /** The same for a column: "9, slight". */
  public static String grainBriefly(Grain grain, ShopUnits units) {
    return grain(grain, units, runOutBriefly(grain));
  }

  private static String grain(Grain grain, ShopUnits units, String runOut) {
    String lines = grain.linesPerCm() == null ? "" : Figures.rounded(lines(grain, units), 0);
    return lines + (lines.isEmpty() || runOut.isEmpty() ? "" : ", ") + runOut;
  }

  /** One word or two; empty where not looked for. */
  public static String runOutBriefly(Grain grain) {
    if (grain.runOut() == null) {
      return "";
    }
    return grain.runOut() == Grain.RunOut.SLIGHT ? "slight" : grain.runOut().inWords();
  }

  /** A few words for a column. */
  public static String seasoning(Seasoning seasoning) {
    return switch (seasoning.state()) {
      case SETTLED -> "settled";
      case DRYING ->
          Double.isNaN(seasoning.daysMore())
              ? briefly(-seasoning.lossGPerWeek())
              : days(seasoning.daysMore()) + " more";
      case GAINING -> briefly(-seasoning.lossGPerWeek());
      case UNKNOWN -> "weigh it";
    };
  }

  private static String briefly(double gPerWeek) {
    String size = Figures.rounded(Math.abs(gPerWeek), Math.abs(gPerWeek) < 10 ? 1 : 0);
    return (gPerWeek < 0 ? "−" : "+") + size + " g/week";
  }

  /** The same in a sentence's part, with the time since the last turning. */
  public static String seasoningWhole(Seasoning seasoning) {
    return since(seasoning)
        + switch (seasoning.state()) {
          case SETTLED -> ", settled";
          case DRYING -> ", " + drying(seasoning);
          case GAINING -> ", gains " + aWeek(-seasoning.lossGPerWeek());
          case UNKNOWN -> ", not weighed twice a week apart since";
        };
  }

  /** "loses 0.9 g a week, ready in about 19 days". */
  public static String drying(Seasoning seasoning) {
    return "loses "
        + aWeek(seasoning.lossGPerWeek())
        + (Double.isNaN(seasoning.daysMore())
            ? ""
            : ", ready in about " + days(seasoning.daysMore()));
  }

  private static String since(Seasoning seasoning) {
    Duration since = seasoning.sinceTurned();
    if (since.toDays() == 0) {
      return seasoning.wasTurned() ? "turned today" : "here since today";
    }
    return (seasoning.wasTurned() ? "turned " : "here for ")
        + days(since.toDays())
        + (seasoning.wasTurned() ? " ago" : "");
  }

  private static String days(double days) {
    long whole = (long) Math.ceil(days);
    return whole == 1 ? "1 day" : whole + " days";
  }

  private static String aWeek(double gPerWeek) {
    return String.format(Locale.ROOT, gPerWeek < 10 ? "%.1f g a week" : "%.0f g a week", gPerWeek);
  }
}
