package sagwright.example;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntFunction;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.SplicedTaper;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;

/** The example workshop's orders: delivered ones, some at work, a dozen open. */
final class ExampleOrders {
  /** A blank is asked for so long before it is planed. */
  static final int TAKEN_BEFORE_PLANING_DAYS = 30;

  private static final double USUAL_MOISTURE_PERCENT = 11;
  private static final int FIRST_NUMBER = 101;

  /**
   * An order that waits for its blank.
   *
   * @param species null for any
   * @param tolerancePercent to either side
   */
  private record Open(
      String species,
      double stiffnessNPerMm,
      double tolerancePercent,
      int sinceDays,
      String notes) {}

  /** Four of them want the same few stout blanks: who is served first matters. */
  private static final List<Open> OPEN =
      List.of(
          new Open("European ash", 2.30, 5, 64, "left-handed, long reach"),
          new Open("European ash", 2.30, 5, 61, "the same as his brother's, R-0121"),
          new Open("European ash", 2.45, 4, 55, "narrow grain, straight to the tip"),
          new Open("European ash", 2.66, 6, 47, "breaks hard"),
          new Open("sugar maple", 2.20, 6, 44, "no grain to be seen from across the table"),
          new Open("European ash", 2.15, 5, 38, "plays off a slow cloth, wants it soft"),
          new Open(null, 2.70, 6, 33, "any wood that comes close"),
          new Open("European ash", 2.50, 3, 27, "sent her old cue along to be measured"),
          new Open("white ash", 2.25, 6, 21, "to match an old butt"),
          new Open("European ash", 2.75, 4, 15, "as stout as it may be"),
          new Open("European ash", 2.40, 5, 9, "a tenth firmer than R-0104"),
          new Open("European ash", 2.68, 2.5, 3, "knows to the hair what he wants"));

  private final List<ExampleOrder> orders = new ArrayList<>();
  private final SetUp usual;

  /**
   * @param day how a day that is counted back is dated
   */
  ExampleOrders(ExampleRack rack, SetUp usual, IntFunction<LocalDate> day) {
    this.usual = usual;
    for (ExampleBlank blank : rack.blanks()) {
      if (blank.isForAnOrder()) {
        int planed = blank.daysAgo(Stage.PLANED);
        FinishPlan plan = plan(orders.size());
        orders.add(
            new ExampleOrder(
                order("European ash", day.apply(planed - 90), "", plan, askFor(blank.wood(), plan)),
                planed + TAKEN_BEFORE_PLANING_DAYS,
                blank.tag()));
      }
    }
    for (Open open : OPEN) {
      orders.add(
          new ExampleOrder(
              order(
                  open.species(),
                  day.apply(open.sinceDays() - 150),
                  open.notes(),
                  plan(orders.size()),
                  ask(open.stiffnessNPerMm(), open.tolerancePercent())),
              open.sinceDays(),
              null));
    }
  }

  List<ExampleOrder> all() {
    return List.copyOf(orders);
  }

  Optional<ExampleOrder> of(ExampleBlank blank) {
    return orders.stream().filter(o -> blank.tag().equals(o.tag())).findFirst();
  }

  private Order order(
      String species, LocalDate promisedFor, String notes, FinishPlan plan, Ask ask) {
    String number = String.format(Locale.ROOT, "R-%04d", FIRST_NUMBER + orders.size());
    return new Order(
        number, species, promisedFor, notes.isEmpty() ? null : notes, plan, ask, List.of());
  }

  private Ask ask(double stiffnessNPerMm, double tolerancePercent) {
    return new Ask(
        usual, stiffnessNPerMm, tolerancePercent, new Aim(430, 20.0), new Aim(408, 12.0));
  }

  /** What a player asks for who then is served by this wood. */
  private Ask askFor(ExampleWood wood, FinishPlan plan) {
    double mmPerN =
        SplicedFlexibility.of(new SplicedTaper(plan.taper(), plan.splice()), usual)
            .mmPerN(wood.modulusMPa(USUAL_MOISTURE_PERCENT), wood.species().modulusToShearRatio());
    return ask(Math.round(20 / mmPerN) / 20.0, 5);
  }

  static FinishPlan plan(int index) {
    Random random = ExampleRack.randomOf("plan " + index);
    double lengthMm = index % 5 == 4 ? 1460 : 1473;
    double tipMm = 9.3 + 0.1 * random.nextInt(4);
    double buttMm = 28.6 + 0.2 * random.nextInt(3);
    Taper taper =
        Taper.round(
            List.of(
                Station.round(0, tipMm),
                Station.round(740, Math.round(50 * (tipMm + buttMm) - 20) / 100.0),
                Station.round(lengthMm, buttMm)),
            lengthMm);
    return new FinishPlan(
        taper,
        0.05,
        8.0,
        new Ferrule(9.5, 8, 8500),
        new Splice(1040, 4, 1120, 15_500, 3),
        List.of(new Weight(1330, 1380, 12, 11_340)),
        List.of());
  }
}
