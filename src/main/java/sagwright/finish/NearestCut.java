package sagwright.finish;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Of the cuts that fit, the one whose forecast lies nearest the stiffness wanted, of equal ones the
 * smallest. The forecast is smooth in the cut but for kinks where a step of the modulus passes a
 * support or the load: it is looked at every few millimetres, then closed in on.
 */
final class NearestCut {
  private static final double STEP_MM = 2;
  private static final int MOST_STEPS = 400;
  private static final int MOST_EVALUATIONS = 500;

  /**
   * Forecasts that miss the ask by amounts nearer to one another than this, relative, are equal.
   */
  private static final double EQUAL = 1e-12;

  /** How closely a cut is found, in mm. */
  private static final double CLOSE_MM = 1e-10;

  private final ForecastRequest request;
  private final CutFinder finder;
  private double cut;
  private double miss;

  NearestCut(ForecastRequest request, CutFinder finder) {
    this.request = request;
    this.finder = finder;
  }

  /** The cut, or the roomiest one where no other fits. */
  Cut find() {
    Cut roomiest = finder.best();
    cut = roomiest.fromMm();
    miss = Math.abs(over(cut));
    for (double[] range : finder.fitting()) {
      search(range[0], range[1]);
    }
    return finder.at(cut);
  }

  private double over(double cutFromMm) {
    return new FinishedShaft(request.blank(), request.plan(), cutFromMm)
            .stiffnessNPerMm(request.setUps().get(0))
        - request.wantedNPerMm();
  }

  private void search(double from, double to) {
    int steps = (int) Math.min(MOST_STEPS, Math.ceil((to - from) / STEP_MM));
    double[] cuts = new double[steps + 1];
    double[] over = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      cuts[i] = i == steps ? to : from + i * (to - from) / steps;
      over[i] = over(cuts[i]);
    }
    for (int i = 0; i <= steps; i++) {
      take(cuts[i], Math.abs(over[i]));
      if (i < steps && over[i] * over[i + 1] < 0) {
        takeCrossing(cuts[i], cuts[i + 1]);
      }
      boolean dips =
          i > 0
              && i < steps
              && Math.abs(over[i]) <= Math.abs(over[i - 1])
              && Math.abs(over[i]) <= Math.abs(over[i + 1])
              && over[i - 1] * over[i + 1] > 0;
      if (dips) {
        takeDip(cuts[i - 1], cuts[i + 1]);
      }
    }
  }

  /** The lowest place of a dip; where it goes through the ask, the places where it does. */
  private void takeDip(double from, double to) {
    double sign = Math.signum(over(from));
    double lowest =
        new BrentOptimizer(1e-12, CLOSE_MM)
            .optimize(
                new MaxEval(MOST_EVALUATIONS),
                new UnivariateObjectiveFunction(at -> sign * over(at)),
                GoalType.MINIMIZE,
                new SearchInterval(from, to))
            .getPoint();
    double overLowest = over(lowest);
    if (sign * overLowest < 0) {
      takeCrossing(from, lowest);
      takeCrossing(lowest, to);
    } else {
      take(lowest, Math.abs(overLowest));
    }
  }

  private void takeCrossing(double from, double to) {
    take(new BrentSolver(1e-15, CLOSE_MM).solve(MOST_EVALUATIONS, this::over, from, to), 0);
  }

  /** Cuts come in rising order but for what a dip has found; of equal ones the smaller is kept. */
  private void take(double at, double missThere) {
    double equal = EQUAL * request.wantedNPerMm();
    if (missThere < miss - equal || (missThere <= miss + equal && at < cut)) {
      cut = at;
      miss = missThere;
    }
  }
}
