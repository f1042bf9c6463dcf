package sagwright.beam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * Looks for caliper readings that stand out from a fair taper: a misread or mistyped diameter.
 *
 * <p>The rule: a polynomial of degree 3 or 4 (from twelve stations on) is fitted to all depths by
 * least squares, and one to all widths. A reading stands out where its studentised residual, in mm,
 * r/√(1 − h), is more than {@link #LEAST_MM} and, externally studentised, more than {@link #TIMES}
 * the scatter of the others (Cook and Weisberg, Residuals and Influence in Regression, 1982,
 * chapter 2; the two limits are ours). What the others let expect of it is r/(1 − h) away. The one
 * that stands out most is taken out and the others are looked at again, so that a misreading throws
 * no suspicion on its neighbours. Fewer than {@link #LEAST_STATIONS} stations tell nothing.
 */
public final class FairTaper {
  public static final double LEAST_MM = 0.35;
  public static final double TIMES = 3;
  public static final int LEAST_STATIONS = 6;

  private static final int LEAST_DEGREE = 3;
  private static final int GREATEST_DEGREE = 4;
  private static final int STATIONS_A_DEGREE = 3;

  private FairTaper() {}

  /**
   * A reading that stands out.
   *
   * @param station counted from 0
   * @param isWidth whether it is the width, else the depth
   * @param readMm as it was read
   * @param fairMm what the others let expect
   */
  public record StandingOut(int station, boolean isWidth, double readMm, double fairMm) {
    public double offMm() {
      return readMm - fairMm;
    }
  }

  /**
   * Those that stand out, by their stations, depths first.
   *
   * @param stations x rising; a width that was not read equals its depth
   */
  public static List<StandingOut> standingOut(List<Station> stations) {
    List<StandingOut> all = new ArrayList<>(standingOut(stations, Station::depthMm, false));
    for (StandingOut width : standingOut(stations, Station::widthMm, true)) {
      Station station = stations.get(width.station());
      if (station.widthMm() != station.depthMm()) {
        all.add(width);
      }
    }
    return all;
  }

  private static List<StandingOut> standingOut(
      List<Station> stations, ToDoubleFunction<Station> diameter, boolean isWidth) {
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < stations.size(); i++) {
      left.add(i);
    }
    List<StandingOut> found = new ArrayList<>();
    while (left.size() >= LEAST_STATIONS) {
      double[] x = left.stream().mapToDouble(i -> stations.get(i).xMm()).toArray();
      double[] d =
          left.stream().mapToDouble(i -> diameter.applyAsDouble(stations.get(i))).toArray();
      Optional<Worst> worst = worst(x, d);
      if (worst.isEmpty()) {
        break;
      }
      int at = worst.get().at();
      found.add(new StandingOut(left.get(at), isWidth, d[at], d[at] - worst.get().deletedMm()));
      left.remove(at);
    }
    found.sort(Comparator.comparingInt(StandingOut::station));
    return found;
  }

  /** The reading that stands out most, and how far off the others let it seem. */
  private record Worst(int at, double deletedMm) {}

  private static Optional<Worst> worst(double[] xMm, double[] diameterMm) {
    OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
    fit.newSampleData(diameterMm, powers(xMm));
    double[] residual = fit.estimateResiduals();
    RealMatrix hat = fit.calculateHat();
    double[] studentised = new double[residual.length];
    double squares = 0;
    int worst = 0;
    for (int i = 0; i < residual.length; i++) {
      squares += residual[i] * residual[i];
      studentised[i] = Math.abs(residual[i]) / Math.sqrt(1 - hat.getEntry(i, i));
      worst = studentised[i] > studentised[worst] ? i : worst;
    }
    double deletedMm = residual[worst] / (1 - hat.getEntry(worst, worst));
    double left = Math.max(0, squares - studentised[worst] * studentised[worst]);
    double scatterMm = Math.sqrt(left / (residual.length - degree(residual.length) - 2));
    boolean standsOut = studentised[worst] > LEAST_MM && studentised[worst] > TIMES * scatterMm;
    return standsOut ? Optional.of(new Worst(worst, deletedMm)) : Optional.empty();
  }

  private static int degree(int stations) {
    return Math.max(LEAST_DEGREE, Math.min(GREATEST_DEGREE, stations / STATIONS_A_DEGREE));
  }

  /** x from −1 at the first to 1 at the last, to the powers of the polynomial. */
  private static double[][] powers(double[] xMm) {
    int degree = degree(xMm.length);
    double middle = (xMm[0] + xMm[xMm.length - 1]) / 2;
    double half = (xMm[xMm.length - 1] - xMm[0]) / 2;
    double[][] powers = new double[xMm.length][degree];
    for (int i = 0; i < xMm.length; i++) {
      double power = 1;
      for (int p = 0; p < degree; p++) {
        power *= (xMm[i] - middle) / half;
        powers[i][p] = power;
      }
    }
    return powers;
  }
}
