package sagwright.screen.choose;

import java.util.List;
import java.util.Optional;
import sagwright.beam.Taper;
import sagwright.choose.PromiseCost;
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
 * @param rankedBy what ranks them, one line
 * @param words null where the shop's scale does not hold: at another than its set-up
 * @param sureness the chance that the shop asks for, 0 to 1
 * @param closely the blanks that were looked at closely, in any order
 * @param cost of promising the first pick; null while it is not known
 * @param canBeTakenBack the promise that one key takes back, as "25-014 from R-0007"; empty for
 *     none
 * @param units that the shop reads weights and balances in
 * @param isReading whether the answer is still being worked out
 */
public record ChooseView(
    Asked order,
    String place,
    String said,
    List<Row> serving,
    List<Row> cannot,
    String rankedBy,
    WordScale words,
    double sureness,
    List<Closely> closely,
    Cost cost,
    String canBeTakenBack,
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
        null, "", "", List.of(), List.of(), "", null, 0.95, List.of(), null, "", units, true);
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
      String reason) {}

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
   * @param mostly where the modulus's uncertainty mostly comes from, in words
   * @param moisturePercent null where not measured
   * @param note the newest note on the blank; empty for none
   */
  public record Closely(
      String tag,
      double[] deflectionMm,
      double[] loadN,
      double stiffnessNPerMm,
      String mostly,
      Double moisturePercent,
      String note) {}

  /**
   * What a promise would cost.
   *
   * @param tag the blank
   * @param otherOrders how many other orders are open
   */
  public record Cost(String tag, int otherOrders, PromiseCost cost) {}
}
