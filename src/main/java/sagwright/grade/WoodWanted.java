package sagwright.grade;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import sagwright.beam.SetUp;
import sagwright.finish.BlankWood;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishedShaft;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/**
 * What modulus a finish plan wants of its wood so that the shaft is as stiff as asked, the wood
 * being alike all along.
 *
 * @param softestMPa at the lower end of the ask's tolerance
 * @param stiffestMPa at the upper end
 */
public record WoodWanted(double softestMPa, double stiffestMPa) {
  /** No wood lies outside: balsa and lignum vitae lie well within. */
  private static final double LEAST_MPA = 100;

  private static final double MOST_MPA = 100_000;
  private static final int MOST_EVALUATIONS = 200;
  private static final double CLOSE_MPA = 1e-6;

  /**
   * @param order without problems (OrderCheck)
   * @param modulusToShearRatio r = E/G
   * @return an end that no wood reaches is not finite: 0 or infinite
   */
  public static WoodWanted by(Order order, double modulusToShearRatio) {
    Ask ask = order.ask();
    return new WoodWanted(
        modulusFor(order.finish(), ask.setUp(), ask.lowestNPerMm(), modulusToShearRatio),
        modulusFor(order.finish(), ask.setUp(), ask.highestNPerMm(), modulusToShearRatio));
  }

  private static double modulusFor(
      FinishPlan plan, SetUp setUp, double stiffnessNPerMm, double ratio) {
    UnivariateFunction over =
        modulus -> shaft(plan, modulus, ratio).stiffnessNPerMm(setUp) - stiffnessNPerMm;
    if (over.value(LEAST_MPA) >= 0) {
      return 0;
    }
    return over.value(MOST_MPA) <= 0
        ? Double.POSITIVE_INFINITY
        : new BrentSolver(1e-14, CLOSE_MPA).solve(MOST_EVALUATIONS, over, LEAST_MPA, MOST_MPA);
  }

  private static FinishedShaft shaft(FinishPlan plan, double modulusMPa, double ratio) {
    ModulusAlong everywhere = ModulusAlong.constant(new Estimate(modulusMPa, 0));
    return new FinishedShaft(BlankWood.ofOneWood(plan.taper(), null, everywhere, ratio), plan, 0);
  }
}
