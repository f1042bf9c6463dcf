package sagwright.screen.choose;

import java.util.List;
import java.util.Optional;
import sagwright.beam.Taper;
import sagwright.choose.PromiseCost;
import sagwright.choose.RankingWeights;
import sagwright.drawing.SeriesBars;
import sagwright.finish.Cut;
import sagwright.finish.FinishPlan;
import sagwright.grade.Ask;
import sagwright.grade.WordScale;
import sagwright.screen.ShopUnits;
import sagwright.uncertainty.Estimate;

/**
 * All that the Choose screen shows at one moment. Immutable.
 *
 * @param order null where none is open
 * @param place where it stands among the open orders, one line
 * @param said what went wrong or was done, one line; empty for nothing
 * @param serving blanks that may serve, best first
 * @param cannot blanks that cannot, each with its reason
 * @param weights what ranks them
 * @param words null where the shop's scale does not hold: at another than its set-up
 * @param sureness the chance that the shop asks for, 0 to 1
 * @param closely the blanks that were looked at closely, in any order
 * @param cost of promising the first pick; null while it is not known
 * @param canBeTakenBack the promise that one key takes back, as "25-014 from R-0007"; empty for
 *     none
 * @param allOrders all open orders at once; null until they were asked for
 * @param units that the shop reads weights and balances in
 * @param isReading whether the answer is still being worked out
 */
public record ChooseView(
    Asked order,
    String place,
    String said,
    List<Row> serving,
    List<Row> cannot,
    RankingWeights weights,
    WordScale words,
    double sureness,
    List<Closely> closely,
    Cost cost,
    String canBeTakenBack,
    AllOrders allOrders,
    ShopUnits units,
    boolean isReading) {
  public ChooseView {
    serving = List.copyOf(serving);
    cannot = List.copyOf(cannot);
    closely = List.copyOf(closely);
  }

  /** Before anything was read. */
  public static ChooseView reading(ShopUnits units) {
    return new ChooseView(
        null,
        "",
        "",
        List.of(),
        List.of(),
        RankingWeights.STIFFNESS_FIRST,
        null,
        0.95,
        List.of(),
        null,
        "",
        null,
        units,
        true);
  }

  /** How often a blank stands among those that may serve: once, or not at all. */
  Optional<Row> servingRow(String tag) {
    return serving.stream().filter(row -> row.tag().equals(tag)).findFirst();
  }

  Optional<Closely> closely(String tag) {
    return closely.stream().filter(c -> c.tag().equals(tag)).findFirst();
  }

  /** A row by its place: those that may serve, then those that cannot. */
  Row row(int place) {
    return place < serving.size() ? serving.get(place) : cannot.get(place - serving.size());
  }

  int rowCount() {
    return serving.size() + cannot.size();
  }

  /**
   * The order.
   *
   * @param details one line: length, tip, butt, weight, balance
   * @param asks one line, as "asks 2.10 N/mm ± 5 %"
   * @param promisedTag the blank that is promised to it, null for none
   */
  public record Asked(
      String number, String details, String asks, Ask ask, FinishPlan plan, String promisedTag) {}

  /**
   * One blank against the order.
   *
   * @param stiffnessNPerMm as forecast, null for a blank that has no run
   * @param verdict meets, undecided, softer or stiffer; empty where there is none
   * @param chance that all that is asked lies within its tolerance, 0 to 1
   * @param modulusMPa null as the stiffness
   * @param cut null as the stiffness
   * @param mass in g, to come
   * @param balance from the butt in mm, to come
   * @param blank its outline now, null as the stiffness
   * @param stage null where not said
   * @param warnings what makes its figures doubtful
   * @param reason why it cannot serve; null where it may
   */
  public record Row(
      String tag,
      Estimate stiffnessNPerMm,
      String verdict,
      double chance,
      Estimate modulusMPa,
      Cut cut,
      ToCome mass,
      ToCome balance,
      Taper blank,
      String stage,
      Seen seen,
      List<String> warnings,
      String reason) {
    public Row {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * What the eye and the scales say of a blank's wood.
   *
   * @param grain as "9, straight"; empty where nobody has looked
   * @param seasoning a few words
   * @param whole the same with the time since the last turning
   */
  public record Seen(String grain, String seasoning, String whole) {}

  /**
   * A figure of the finished shaft.
   *
   * @param value null where not known
   * @param isOff whether it lies outside what is asked
   */
  public record ToCome(Double value, boolean isOff) {
    static final ToCome UNKNOWN = new ToCome(null, false);
  }

  /**
   * A blank's latest run and where its uncertainty comes from. The arrays must not change.
   *
   * @param deflectionMm from the rest
   * @param loadN one for each deflection
   * @param stiffnessNPerMm of the shaft as it is now
   * @param tested the day; empty where there is no run
   * @param setUp where on the shaft, in words; empty where there is no run
   * @param budget what the ± of the run's modulus is made of, greatest first
   * @param moisturePercent null where not measured
   * @param notes on the blank, newest first
   */
  public record Closely(
      String tag,
      double[] deflectionMm,
      double[] loadN,
      double stiffnessNPerMm,
      String tested,
      String setUp,
      List<SeriesBars.Bar> budget,
      Double moisturePercent,
      List<String> notes) {
    public Closely {
      budget = List.copyOf(budget);
      notes = List.copyOf(notes);
    }

    /** Where the uncertainty mostly comes from; empty where there is none. */
    String mostly() {
      return budget.isEmpty() ? "" : budget.get(0).words();
    }
  }

  /**
   * What a promise would cost.
   *
   * @param tag the blank
   * @param otherOrders how many other orders are open
   */
  public record Cost(String tag, int otherOrders, PromiseCost cost) {}

  /**
   * All open orders and free blanks at once, beside what comes of it if each takes its best in
   * turn.
   *
   * @param lines as the orders came in
   * @param sumAtOnce of the chances
   * @param sumInTurn the same, first come, first served
   */
  public record AllOrders(List<Line> lines, double sumAtOnce, double sumInTurn) {
    public AllOrders {
      lines = List.copyOf(lines);
    }

    /**
     * An order.
     *
     * @param asks as "2.10 N/mm ± 5 %"
     * @param atOnce what it gets of all at once
     * @param inTurn what it would get in its turn
     */
    public record Line(String order, String asks, Gets atOnce, Gets inTurn) {}

    /**
     * A blank for an order.
     *
     * @param tag empty for none
     * @param chance 0 for none
     */
    public record Gets(String tag, double chance) {
      static final Gets NONE = new Gets("", 0);
    }
  }
}
