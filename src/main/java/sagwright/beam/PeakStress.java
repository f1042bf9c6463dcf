package sagwright.beam;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * The largest bending stress in a shaft, and where it is. On a taper it is not under the load: the
 * thin side of a linear round taper is worst where its diameter is 3/2 of what it would be at the
 * support, if that is short of the load.
 *
 * @param mpaPerN MPa per newton at the load
 * @param xMm where, from the tip end
 */
public record PeakStress(double mpaPerN, double xMm) {
  /** Each straight piece is looked at in this many parts, so that no second peak is missed. */
  private static final int PARTS = 16;

  private static final double SMALLEST_RELATIVE_STEP = 1e-9;

  /** Formulas by section: docs/contract.md, section 2. */
  public static PeakStress of(Taper taper, SetUp setUp) {
    StressPerNewton stress = new StressPerNewton(taper, setUp);
    PeakStress best = new PeakStress(0, setUp.loadMm());
    double from = setUp.supportAMm();
    while (from < setUp.supportBMm()) {
      double to = stress.nextKink(from);
      double bestX = from;
      double bestHere = -1;
      for (int i = 0; i <= PARTS; i++) {
        double x = from + (to - from) * i / PARTS;
        double here = stress.at(x);
        if (here > bestHere) {
          bestHere = here;
          bestX = x;
        }
      }
      double step = (to - from) / PARTS;
      UnivariatePointValuePair peak =
          new BrentOptimizer(SMALLEST_RELATIVE_STEP, 1e-12)
              .optimize(
                  new MaxEval(200),
                  GoalType.MAXIMIZE,
                  new UnivariateObjectiveFunction(stress::at),
                  new SearchInterval(Math.max(from, bestX - step), Math.min(to, bestX + step)));
      if (peak.getValue() > bestHere) {
        bestHere = peak.getValue();
        bestX = peak.getPoint();
      }
      if (bestHere > best.mpaPerN()) {
        best = new PeakStress(bestHere, bestX);
      }
      from = to;
    }
    return best;
  }

  /** The load in N at which the largest bending stress reaches a given one. */
  public double loadAtN(double stressMPa) {
    return stressMPa / mpaPerN;
  }

  private record StressPerNewton(Taper taper, SetUp setUp) {
    double nextKink(double from) {
      double to = setUp.supportBMm();
      if (from < setUp.loadMm()) {
        to = setUp.loadMm();
      }
      for (int i = 0; i < taper.stationCount(); i++) {
        double x = taper.stationXMm(i);
        if (from < x && x < to) {
          return x;
        }
      }
      return to;
    }

    double at(double x) {
      double a = setUp.supportAMm();
      double b = setUp.supportBMm();
      double c = setUp.loadMm();
      double moment = x <= c ? (b - c) * (x - a) / (b - a) : (c - a) * (b - x) / (b - a);
      double d = taper.depthAt(x);
      double w = taper.widthAt(x);
      double cos = Math.cos(Math.toRadians(setUp.turnDegrees()));
      double sin = Math.sin(Math.toRadians(setUp.turnDegrees()));
      double inverse = 1 / (taper.shape().secondMomentFactor() * d * w);
      double across0 = cos * inverse / (2 * d);
      double across90 = sin * inverse / (2 * w);
      return switch (taper.shape()) {
        case ELLIPSE -> moment * Math.hypot(across0, across90);
        case RECTANGLE -> moment * (Math.abs(across0) + Math.abs(across90));
      };
    }
  }
}
