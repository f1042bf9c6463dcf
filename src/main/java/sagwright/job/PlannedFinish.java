package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.Taper;
import sagwright.finish.BlankWood;
import sagwright.finish.ButtBore;
import sagwright.finish.FinishedShaft;
import sagwright.grade.Ask;
import sagwright.grade.GradedForecast;
import sagwright.grade.Grader;
import sagwright.grade.Order;
import sagwright.grade.PlaningStep;
import sagwright.grade.WoodWanted;

/**
 * An order's finish plan in a blank: what comes of it, and what could be done about it.
 *
 * @param blank null where none of the rack may serve: then the order's own taper alone
 * @param tags all blanks of the order's wood that were tested and fit, best first
 * @param graded null without a blank
 * @param planing a tenth of a millimetre thicker, then thinner, as far as they can be planed
 * @param spliceEffects for each ask how much stiffer the splice makes it: 0.04 is 4 %; empty
 *     without a splice or a blank
 * @param lead that brings weight and balance
 * @param wanted of the wood, whatever the blank
 */
public record PlannedFinish(
    Order order,
    InBlank blank,
    List<String> tags,
    GradedForecast graded,
    List<PlaningStep> planing,
    List<Double> spliceEffects,
    PlannedLead lead,
    WoodWanted wanted) {
  public PlannedFinish {
    tags = List.copyOf(tags);
    planing = List.copyOf(planing);
    spliceEffects = List.copyOf(spliceEffects);
  }

  /** Why the plan is drawn in this blank. */
  public enum Why {
    PROMISED("promised to it"),
    PICKED("picked"),
    BEST("best of the rack"),
    ON_BENCH("on the bench");

    private final String words;

    Why(String words) {
      this.words = words;
    }

    public String inWords() {
      return words;
    }
  }

  /** The blank that the plan is laid in. */
  public record InBlank(String tag, Taper taper, Why why) {}

  /**
   * @param graded of this wood
   */
  static PlannedFinish of(
      InBlank in, List<String> tags, BlankWood wood, GradedForecast graded, ButtBore bore) {
    Order order = graded.order();
    Grader grader = new Grader(graded.sureness());
    List<PlaningStep> planing = new ArrayList<>();
    for (double mm : new double[] {PlaningStep.USUAL_MM, -PlaningStep.USUAL_MM}) {
      PlaningStep.of(grader, wood, graded, mm).ifPresent(planing::add);
    }
    return new PlannedFinish(
        order,
        in,
        tags,
        graded,
        planing,
        spliceEffects(order, wood, graded.forecast().cut().fromMm()),
        PlannedLead.of(order.finish(), order.ask(), wood.densityKgM3(), bore),
        WoodWanted.by(order, wood.modulusToShearRatio()));
  }

  private static List<Double> spliceEffects(Order order, BlankWood wood, double cutFromMm) {
    if (order.finish().splice() == null) {
      return List.of();
    }
    FinishedShaft shaft = new FinishedShaft(wood, order.finish(), cutFromMm);
    return order.asks().stream().map(Ask::setUp).map(shaft::spliceEffect).toList();
  }
}
