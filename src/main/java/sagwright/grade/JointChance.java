package sagwright.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import sagwright.finish.AskedStiffness;

/**
 * The chance that several stiffnesses all lie within their tolerances. Each is its forecast plus
 * fixed multiples of a few independent standard normal errors, which all of them share; that makes
 * them jointly normal, mostly with a covariance that is nearly or wholly singular.
 *
 * <p>Two of them are a matter of {@link BivariateNormal}. For more the errors are turned into their
 * principal directions. Along the greatest, for given values of the others, the asks leave an
 * interval, whose chance is known exactly; over the others, which matter less and less, it is
 * integrated, over the last with every kink of the interval's ends as a border. Absolute error
 * below 1e-8 for up to three asks or sources of error, else below 1e-6.
 */
final class JointChance {
  /** Beyond so many standard uncertainties there is nothing left (6e-18). */
  private static final double FAR = 8.6;

  /** A direction that moves no figure by more than this share of its uncertainty is left out. */
  private static final double NO_EFFECT = 1e-9;

  /** Absolute error of the outermost integral, by the number of directions. */
  private static final double[] TOLERANCES = {0, 1e-10, 1e-10, 1e-9};

  private static final double TOLERANCE_OF_MANY = 2e-7;

  /** An interval with nothing in it. */
  private static final double[] NOTHING = {1, 0};

  private final double[] lowest;
  private final double[] highest;

  /** Direction (least first), then ask: what one standard error along it does to the stiffness. */
  private final double[][] effects;

  private JointChance(double[] lowest, double[] highest, double[][] effects) {
    this.lowest = lowest;
    this.highest = highest;
    this.effects = effects;
  }

  /** The chance that every stiffness lies within the tolerance of its ask. */
  static double ofAll(List<Ask> asks, List<AskedStiffness> stiffnesses) {
    List<double[]> rows = new ArrayList<>();
    List<double[]> limits = new ArrayList<>();
    for (int i = 0; i < asks.size(); i++) {
      AskedStiffness forecast = stiffnesses.get(i);
      double low = asks.get(i).lowestNPerMm() - forecast.stiffnessNPerMm();
      double high = asks.get(i).highestNPerMm() - forecast.stiffnessNPerMm();
      double u = forecast.estimate().standardUncertainty();
      if (u == 0) {
        if (low > 0 || high < 0) {
          return 0;
        }
        continue;
      }
      if (low / u < -FAR && high / u > FAR) {
        continue; // surely within
      }
      limits.add(new double[] {low / u, high / u});
      rows.add(forecast.errorsNPerMm().stream().mapToDouble(e -> e / u).toArray());
    }
    return rows.isEmpty() ? 1 : of(rows.toArray(double[][]::new), limits);
  }

  /**
   * @param rows for each figure what the independent errors do to it, their squares adding up to 1
   * @param limits for each figure its lowest and highest
   */
  static double of(double[][] rows, List<double[]> limits) {
    if (rows.length == 2) {
      return ofTwo(rows, limits);
    }
    return ofMany(rows, limits);
  }

  private static double ofTwo(double[][] rows, List<double[]> limits) {
    double correlation = 0;
    for (int i = 0; i < rows[0].length; i++) {
      correlation += rows[0][i] * rows[1][i];
    }
    double[] first = limits.get(0);
    double[] second = limits.get(1);
    return BivariateNormal.within(
        new BivariateNormal.Limits(first[0], first[1]),
        new BivariateNormal.Limits(second[0], second[1]),
        Math.max(-1, Math.min(1, correlation)));
  }

  /** By integration, for any number of figures. */
  static double ofMany(double[][] rows, List<double[]> limits) {
    RealMatrix errors = new Array2DRowRealMatrix(rows);
    EigenDecomposition principal = new EigenDecomposition(errors.transpose().multiply(errors));
    double[][] effects =
        IntStream.range(0, principal.getV().getColumnDimension())
            .mapToObj(i -> errors.operate(principal.getV().getColumn(i)))
            .filter(effect -> square(effect) > NO_EFFECT * NO_EFFECT)
            .sorted(Comparator.comparingDouble(JointChance::square))
            .toArray(double[][]::new);
    double[] lowest = limits.stream().mapToDouble(l -> l[0]).toArray();
    double[] highest = limits.stream().mapToDouble(l -> l[1]).toArray();
    JointChance chance = new JointChance(lowest, highest, effects);
    double all = chance.given(0, new double[rows.length]);
    return Math.min(1, Math.max(0, all));
  }

  /**
   * The chance given what the directions before this one have done to each figure.
   *
   * @param soFar for each figure
   */
  private double given(int direction, double[] soFar) {
    if (direction == effects.length - 1) {
      return innermost(soFar);
    }
    double[] effect = effects[direction];
    AdaptiveGauss integral =
        new AdaptiveGauss(
            z -> density(z) * given(direction + 1, shifted(soFar, effect, z)),
            tolerance() / Math.pow(10, direction));
    double[] borders =
        direction == effects.length - 2 ? kinks(soFar) : new double[] {-FAR, -3, 0, 3, FAR};
    double sum = 0;
    for (int i = 0; i + 1 < borders.length; i++) {
      sum += integral.over(borders[i], borders[i + 1]);
    }
    return sum;
  }

  private double tolerance() {
    int count = effects.length;
    return count < TOLERANCES.length ? TOLERANCES[count] : TOLERANCE_OF_MANY;
  }

  private double innermost(double[] soFar) {
    double[] interval = interval(soFar);
    return Chance.standardBetween(interval[0], interval[1]);
  }

  /** Along the greatest direction every figure leaves an interval; all of them, the common one. */
  private double[] interval(double[] soFar) {
    double[] effect = effects[effects.length - 1];
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    for (int i = 0; i < effect.length; i++) {
      double low = lowest[i] - soFar[i];
      double high = highest[i] - soFar[i];
      if (effect[i] != 0) {
        from = Math.max(from, Math.min(low / effect[i], high / effect[i]));
        to = Math.min(to, Math.max(low / effect[i], high / effect[i]));
      } else if (low > 0 || high < 0) {
        return NOTHING;
      }
    }
    return new double[] {from, to};
  }

  /** Where along the last direction but one the ends of the interval change hands or meet. */
  private double[] kinks(double[] soFar) {
    double[] outer = effects[effects.length - 2];
    double[] inner = effects[effects.length - 1];
    List<double[]> lines = new ArrayList<>();
    List<Double> kinks = new ArrayList<>(List.of(-FAR, 0.0, FAR));
    for (int i = 0; i < inner.length; i++) {
      for (double limit : new double[] {lowest[i], highest[i]}) {
        double left = limit - soFar[i];
        if (inner[i] != 0) {
          lines.add(new double[] {left / inner[i], -outer[i] / inner[i]});
        } else if (Math.abs(left / outer[i]) < FAR) {
          kinks.add(left / outer[i]);
        }
      }
    }
    for (int i = 0; i < lines.size(); i++) {
      for (int j = 0; j < i; j++) {
        double[] line = lines.get(i);
        double z = (line[0] - lines.get(j)[0]) / (lines.get(j)[1] - line[1]);
        if (Math.abs(z) < FAR && isEnd(line[0] + z * line[1], shifted(soFar, outer, z))) {
          kinks.add(z);
        }
      }
    }
    return kinks.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
  }

  /** Whether two lines that meet at a value are an end of the interval there. */
  private boolean isEnd(double value, double[] soFar) {
    double[] interval = interval(soFar);
    double near = 1e-9 * (1 + Math.abs(value));
    return Math.abs(value - interval[0]) <= near || Math.abs(value - interval[1]) <= near;
  }

  private static double[] shifted(double[] soFar, double[] effect, double z) {
    double[] shifted = soFar.clone();
    for (int i = 0; i < shifted.length; i++) {
      shifted[i] += z * effect[i];
    }
    return shifted;
  }

  private static double square(double[] effect) {
    return DoubleStream.of(effect).map(e -> e * e).sum();
  }

  private static double density(double z) {
    return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }
}
