package sagwright.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import sagwright.uncertainty.Warning;

/**
 * The line through settled pairs noted by hand: every pair counts. Among seven or more, one whose
 * leave-one-out studentised residual is beyond chance (0.1 % over all pairs, Bonferroni) is set
 * aside as misread, unless a bend of all pairs explains them better than one misread pair does.
 *
 * <p>The test: R. D. Cook and S. Weisberg, Residuals and Influence in Regression (1982), section
 * 2.2.2. Its spread is never taken as less than the stated uncertainties.
 */
final class HandReadFit {
  private static final int LEAST_UNLIKE_LOADS = 3;
  private static final int LEAST_TO_SET_ASIDE = 7;
  private static final double CHANCE_OF_FALSE_ALARM = 0.001;
  private static final double CHANCE_OF_FALSE_BEND = 0.01;
  private static final double LEAST_CORRELATION_SQUARED = 0.8;
  private static final double ROUNDING = 1e-7;
  private static final double WORTH_SAYING = 0.01;

  private final double[] load;
  private final double[] deflection;
  private final ReadingUncertainty uncertainty;
  private final boolean[] used;
  private final List<Warning> warnings = new ArrayList<>();

  private HandReadFit(HandReadings readings, ReadingUncertainty uncertainty) {
    load = readings.loadN();
    deflection = readings.deflectionMm();
    this.uncertainty = uncertainty;
    used = new boolean[load.length];
    Arrays.fill(used, true);
  }

  static StiffnessFit of(HandReadings readings, ReadingUncertainty uncertainty)
      throws PoorRunException {
    return new HandReadFit(readings, uncertainty).fit();
  }

  private StiffnessFit fit() throws PoorRunException {
    if (unlikeLoads() < LEAST_UNLIKE_LOADS) {
      throw new PoorRunException(
          "too few pairs: "
              + unlikeLoads()
              + " unlike loads, at least "
              + LEAST_UNLIKE_LOADS
              + " are needed");
    }
    setMisreadAside();
    LineSums sums = LineSums.over(deflection, load, used, 0, load.length);
    if (sums.sxx() == 0) {
      throw new PoorRunException("the gauge does not move while the load rises");
    }
    if (sums.sxy() <= 0) {
      throw new PoorRunException(
          "the deflection falls while the load rises: load and gauge show no stiffness");
    }
    if (sums.correlationSquared() < LEAST_CORRELATION_SQUARED) {
      throw new PoorRunException("load and gauge lie on no line");
    }
    YorkLine line = YorkLine.ofEqualErrors(sums, uncertainty.gaugeMm(), uncertainty.loadN());
    double bend = bendOf(line);
    if (bend > 0) {
      warnings.add(new RunWarning.PairsBend(100 * 2 * bend / line.slope()));
    }
    return answer(line, Math.hypot(line.slopeUncertainty(), bend / Math.sqrt(3)));
  }

  private StiffnessFit answer(YorkLine line, double lineUncertainty) {
    int least = -1;
    int most = -1;
    int aside = 0;
    for (int i = 0; i < load.length; i++) {
      if (!used[i]) {
        aside++;
        continue;
      }
      least = least < 0 || load[i] < load[least] ? i : least;
      most = most < 0 || load[i] > load[most] ? i : most;
    }
    double range = load[most] - load[least];
    return new StiffnessFit(
        line.slope(),
        lineUncertainty,
        line.intercept(),
        load[least],
        deflection[least],
        0,
        range,
        used,
        aside,
        null,
        range,
        warnings);
  }

  private int unlikeLoads() {
    return (int) Arrays.stream(load).distinct().count();
  }

  private void setMisreadAside() {
    int n = load.length;
    if (n < LEAST_TO_SET_ASIDE) {
      return;
    }
    // deflection on load: hung masses are the surer of the two, the dial is what is misread
    LineSums sums = LineSums.over(load, deflection, used, 0, load.length);
    double slope = sums.sxy() / sums.sxx();
    double squares = sums.syy() - slope * sums.sxy();
    double stated = Math.hypot(uncertainty.gaugeMm(), slope * uncertainty.loadN());
    double floor = Math.max(stated, ROUNDING * Math.sqrt(sums.syy()));
    int worst = -1;
    double greatest = 0;
    double squaresWithout = 0;
    double off = 0;
    for (int i = 0; i < n; i++) {
      double u = load[i] - sums.meanX();
      double residual = deflection[i] - sums.meanY() - slope * u;
      double left = 1 - 1.0 / n - u * u / sums.sxx();
      double without = Math.max(0, squares - residual * residual / left);
      double spread = Math.max(floor, Math.sqrt(without / (n - 3)));
      double t = Math.abs(residual) / (spread * Math.sqrt(left));
      if (t > greatest) {
        greatest = t;
        worst = i;
        squaresWithout = without;
        off = residual / left;
      }
    }
    double bound =
        new TDistribution(n - 3).inverseCumulativeProbability(1 - CHANCE_OF_FALSE_ALARM / (2 * n));
    if (worst >= 0 && greatest > bound && squaresWithout < parabola().squares) {
      used[worst] = false;
      warnings.add(new RunWarning.PairSetAside(load[worst], deflection[worst], off));
      if (unlikeLoadsUsed() < LEAST_UNLIKE_LOADS) {
        used[worst] = true;
        warnings.clear();
      }
    }
  }

  private int unlikeLoadsUsed() {
    double[] kept = new double[load.length];
    int count = 0;
    for (int i = 0; i < load.length; i++) {
      if (used[i]) {
        kept[count++] = load[i];
      }
    }
    return (int) Arrays.stream(kept, 0, count).distinct().count();
  }

  /** Half of what the slope changes from the least to the greatest load, 0 where it does not. */
  private double bendOf(YorkLine line) {
    int free = line.points() - 3;
    if (free < 2) {
      return 0;
    }
    Parabola parabola = parabola();
    double stated = Math.hypot(uncertainty.gaugeMm(), uncertainty.loadN() / line.slope());
    double variance = Math.max(parabola.squares / free, stated * stated);
    double t = parabola.gain / variance;
    double bound =
        new TDistribution(free).inverseCumulativeProbability(1 - CHANCE_OF_FALSE_BEND / 2);
    // slope of deflection changes by 2·curvature·range from end to end
    double share = Math.abs(parabola.curvature) * parabola.range * line.slope();
    return t > bound * bound && 2 * share > WORTH_SAYING ? share * line.slope() : 0;
  }

  /**
   * The parabola of deflection on load.
   *
   * @param squares what it leaves, in mm²
   * @param gain what it takes off the line's squares, in mm²
   */
  private record Parabola(double curvature, double squares, double gain, double range) {}

  private Parabola parabola() {
    LineSums sums = LineSums.over(load, deflection, used, 0, load.length);
    double slope = sums.sxy() / sums.sxx();
    double third = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < load.length; i++) {
      if (used[i]) {
        double u = load[i] - sums.meanX();
        third += u * u * u;
        low = Math.min(low, load[i]);
        high = Math.max(high, load[i]);
      }
    }
    // u² freed of its own line on u is orthogonal to the straight line
    double qq = 0;
    double qr = 0;
    double squares = 0;
    for (int i = 0; i < load.length; i++) {
      if (used[i]) {
        double u = load[i] - sums.meanX();
        double q = u * u - sums.sxx() / sums.n() - third / sums.sxx() * u;
        double residual = deflection[i] - sums.meanY() - slope * u;
        qq += q * q;
        qr += q * residual;
        squares += residual * residual;
      }
    }
    double gain = qq > 0 ? qr * qr / qq : 0;
    return new Parabola(qq > 0 ? qr / qq : 0, Math.max(0, squares - gain), gain, high - low);
  }
}
