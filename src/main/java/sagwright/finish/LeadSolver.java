package sagwright.finish;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * Finds where in its bore a lead must lie, and how long it must be, so that the finished shaft has
 * the mass and the balance asked.
 *
 * <p>A lead that starts at a given place has one length that brings the mass; the further towards
 * the butt it starts, the nearer to the butt the shaft balances. So one root gives both. Where
 * there is none, the lead that misses least is sought.
 */
public final class LeadSolver {
  private static final int MOST_EVALUATIONS = 300;
  private static final double CLOSE_MM = 1e-9;

  /** How closely the nearest miss is found, in mm: far finer than any bore is drilled. */
  private static final double NEAR_MM = 1e-3;

  private final FinishPlan plan;
  private final double woodDensityKgM3;
  private final LeadBore bore;
  private final LeadAim aim;

  /**
   * @param plan without problems (FinishCheck); its weights stay and must leave the bore free
   * @throws IllegalArgumentException where the bore does not lie inside the wood, or a lead would
   *     be no heavier than what it displaces; the message says so
   */
  public LeadSolver(FinishPlan plan, double woodDensityKgM3, LeadBore bore, LeadAim aim) {
    this.plan = plan;
    this.woodDensityKgM3 = woodDensityKgM3;
    this.bore = bore;
    this.aim = aim;
    List<FinishProblem> problems =
        FinishCheck.problemsOf(planWith(bore.filled(bore.fromMm(), bore.toMm())));
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException("the bore " + problems.get(0).whatIsWrong());
    }
    double heaviestWood =
        Math.max(woodDensityKgM3, plan.splice() == null ? 0 : plan.splice().densityKgM3());
    if (!(bore.densityKgM3() > heaviestWood)) {
      throw new IllegalArgumentException("a lead must be heavier than the wood it displaces");
    }
  }

  /** The lead that brings mass and balance, or comes nearest. */
  public LeadPlan solve() {
    double first = bore.fromMm();
    double last = bore.toMm();
    double toGain = aim.massG() - got(first, first).massG();
    double mostGain = got(first, last).massG() - got(first, first).massG();
    if (toGain > 0 && toGain <= mostGain) {
      double lastStart = root(from -> got(from, last).massG() - aim.massG(), first, last);
      UnivariateFunction balanceOff =
          from -> got(from, endFor(from)).balanceFromButtMm() - aim.balanceFromButtMm();
      if (balanceOff.value(first) >= 0 && balanceOff.value(lastStart) <= 0) {
        double from = root(balanceOff, first, lastStart);
        return answer(from, endFor(from));
      }
    }
    return nearest();
  }

  /** Where a lead that starts at a place must end to bring the mass; the bore's end at the most. */
  private double endFor(double from) {
    double toHeaviest = got(from, bore.toMm()).massG() - aim.massG();
    return toHeaviest <= 0
        ? bore.toMm()
        : root(to -> got(from, to).massG() - aim.massG(), from, bore.toMm());
  }

  private static double root(UnivariateFunction function, double from, double to) {
    if (from == to || function.value(from) == 0) {
      return from;
    }
    return function.value(to) == 0
        ? to
        : new BrentSolver(1e-14, CLOSE_MM).solve(MOST_EVALUATIONS, function, from, to);
  }

  private LeadPlan nearest() {
    double from =
        least(
                start -> least(end -> miss(start, end), start, bore.toMm()).getValue(),
                bore.fromMm(),
                bore.toMm())
            .getPoint();
    double to = least(end -> miss(from, end), from, bore.toMm()).getPoint();
    boolean noneIsNearer = miss(bore.fromMm(), bore.fromMm()) <= miss(from, to);
    return noneIsNearer ? answer(bore.fromMm(), bore.fromMm()) : answer(from, to);
  }

  private double miss(double from, double to) {
    return aim.missOf(got(from, to));
  }

  /** The least value between two places; the ends are looked at too. */
  private static UnivariatePointValuePair least(
      UnivariateFunction function, double from, double to) {
    UnivariatePointValuePair atFrom = new UnivariatePointValuePair(from, function.value(from));
    if (to - from <= NEAR_MM) {
      return atFrom;
    }
    UnivariatePointValuePair inside =
        new BrentOptimizer(1e-8, NEAR_MM / 10)
            .optimize(
                new MaxEval(MOST_EVALUATIONS),
                new UnivariateObjectiveFunction(function),
                GoalType.MINIMIZE,
                new SearchInterval(from, to));
    UnivariatePointValuePair atTo = new UnivariatePointValuePair(to, function.value(to));
    UnivariatePointValuePair end = atFrom.getValue() <= atTo.getValue() ? atFrom : atTo;
    return end.getValue() <= inside.getValue() ? end : inside;
  }

  private LeadPlan answer(double from, double to) {
    Weight lead = to - from > CLOSE_MM ? bore.filled(from, to) : null;
    return new LeadPlan(lead, got(from, to), aim);
  }

  private MassAndBalance got(double from, double to) {
    FinishPlan leaded = to - from > CLOSE_MM ? planWith(bore.filled(from, to)) : plan;
    return new FinishedMass(leaded, woodDensityKgM3).total();
  }

  private FinishPlan planWith(Weight lead) {
    List<Weight> weights = new ArrayList<>(plan.weights());
    weights.add(lead);
    return plan.withWeights(weights);
  }
}
