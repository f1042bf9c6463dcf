package sagwright.beam;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A part of the shaft between two kinks, short enough for one {@link GaussLegendre} rule.
 *
 * <p>At an end where the integrand goes like a power of √(x − end), x = end ± length·u² makes it
 * smooth in u; a stretch near such a place, but not at it, is made no longer than its distance from
 * it.
 *
 * @param root at which end the integrand is of root type
 */
public record Stretch(double fromMm, double toMm, Root root) {
  /** The end at which an integrand is of root type. */
  public enum Root {
    NONE,
    AT_FROM,
    AT_TO
  }

  /** Says whether a part of the shaft is short enough for what is to be integrated over it. */
  @FunctionalInterface
  public interface Gentle {
    boolean isGentle(double fromMm, double toMm);
  }

  /** Takes a point of the rule, x in mm and the weight in mm. */
  @FunctionalInterface
  public interface Visitor {
    void visit(double xMm, double weightMm);
  }

  public double lengthMm() {
    return toMm - fromMm;
  }

  /** Shows each point of the rule. */
  public void forEachPoint(Visitor visitor) {
    double length = lengthMm();
    for (int i = 0; i < GaussLegendre.POINTS; i++) {
      double u = (1 + GaussLegendre.NODES[i]) / 2;
      double weight = GaussLegendre.WEIGHTS[i] / 2 * length;
      switch (root) {
        case NONE -> visitor.visit(fromMm + length * u, weight);
        case AT_FROM -> visitor.visit(fromMm + length * u * u, 2 * u * weight);
        case AT_TO -> visitor.visit(toMm - length * u * u, 2 * u * weight);
      }
    }
  }

  /** The integral over some stretches. */
  public static double integral(List<Stretch> stretches, DoubleUnaryOperator integrand) {
    double[] sum = new double[1];
    for (Stretch stretch : stretches) {
      stretch.forEachPoint((x, weight) -> sum[0] += weight * integrand.applyAsDouble(x));
    }
    return sum[0];
  }

  /** The stretches from one place to another, in order, cut at the kinks and down to gentleness. */
  public static List<Stretch> between(double fromMm, double toMm, List<Kink> kinks, Gentle gentle) {
    return new StretchCutter(kinks, gentle).between(fromMm, toMm);
  }
}
