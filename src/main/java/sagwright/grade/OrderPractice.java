package sagwright.grade;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.Station;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;

/**
 * Holds an order without problems ({@link OrderCheck}) to the rules of the games and to common
 * practice. What comes of it are warnings: an order may be as its player wants it.
 */
public final class OrderPractice {
  /** How an extra is called that is the cue's joint. */
  public static final String JOINT = "joint";

  private static final double LEAST_WALL_MM = 0.3;
  private static final double LEAST_TENON_SHARE = 0.75;

  private final List<OrderWarning> warnings = new ArrayList<>();

  private OrderPractice() {}

  /** What the maker should look at twice, the rules of the games first. */
  public static List<OrderWarning> warningsOf(Order order) {
    OrderPractice practice = new OrderPractice();
    practice.rules(GameRules.SNOOKER, order);
    practice.rules(GameRules.POOL, order);
    practice.plan(order.finish());
    practice.asked(order);
    return List.copyOf(practice.warnings);
  }

  private void rules(GameRules rules, Order order) {
    FinishPlan plan = order.finish();
    double tipMm = plan.diameterAt(0);
    if (plan.lengthMm() < rules.leastLengthMm()) {
      warnings.add(new OrderWarning.TooShort(plan.lengthMm(), rules));
    }
    Aim mass = order.ask().massG();
    if (mass != null && mass.value() > rules.mostMassG()) {
      warnings.add(new OrderWarning.TooHeavy(mass.value(), rules));
    }
    if (tipMm > rules.mostTipMm()) {
      warnings.add(new OrderWarning.TipTooWide(tipMm, rules));
    }
    if (plan.ferrule() != null && plan.ferrule().lengthMm() > rules.mostFerruleMm()) {
      warnings.add(new OrderWarning.FerruleTooLong(plan.ferrule().lengthMm(), rules));
    }
  }

  private void plan(FinishPlan plan) {
    double tipMm = plan.diameterAt(0);
    common("length", plan.lengthMm(), CommonPractice.LENGTH);
    common("tip", tipMm, CommonPractice.TIP);
    common("butt", plan.diameterAt(plan.lengthMm()), CommonPractice.BUTT);
    List<Station> knots = plan.taper().stations();
    for (int i = 1; i < knots.size(); i++) {
      if (knots.get(i).depthMm() < knots.get(i - 1).depthMm()) {
        warnings.add(new OrderWarning.RunsBackwards(knots.get(i - 1).xMm(), knots.get(i).xMm()));
      }
    }
    if (plan.ferrule() != null) {
      ferrule(plan.ferrule(), tipMm);
    }
    if (plan.splice() != null && plan.splice().fromMm() < plan.lengthMm() / 2) {
      warnings.add(new OrderWarning.LongSplice(plan.splice().fromMm()));
    }
    for (Extra extra : plan.extras()) {
      if (isJoint(extra) && extra.massG() == 0) {
        warnings.add(new OrderWarning.JointWithoutMass(extra.xMm()));
      }
    }
  }

  private void ferrule(Ferrule ferrule, double tipMm) {
    common("ferrule", ferrule.lengthMm(), CommonPractice.FERRULE_LENGTH);
    double wallMm = (tipMm - ferrule.boreMm()) / 2;
    if (wallMm < LEAST_WALL_MM) {
      warnings.add(new OrderWarning.ThinFerrule(Math.max(0, wallMm)));
    }
    if (ferrule.boreMm() < LEAST_TENON_SHARE * tipMm) {
      warnings.add(new OrderWarning.ThinTenon(ferrule.boreMm(), tipMm));
    }
  }

  private void asked(Order order) {
    Aim mass = order.ask().massG();
    if (mass != null) {
      common("weight", mass.value(), CommonPractice.MASS);
    }
    Aim balance = order.ask().balanceFromButtMm();
    if (balance != null) {
      common("balance", balance.value(), CommonPractice.BALANCE);
    }
    for (Ask ask : order.asks()) {
      common("tolerance", ask.tolerancePercent(), CommonPractice.TOLERANCE);
    }
    Double flat = order.remarks().buttFlatMm();
    if (flat != null) {
      common("butt flat", flat, CommonPractice.BUTT_FLAT);
    }
  }

  /** Whether an extra is the cue's joint. */
  public static boolean isJoint(Extra extra) {
    return JOINT.equalsIgnoreCase(extra.name());
  }

  private void common(String what, double value, CommonPractice range) {
    if (!range.holds(value)) {
      warnings.add(new OrderWarning.Unusual(what, value, range));
    }
  }
}
