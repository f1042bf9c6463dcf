package sagwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sagwright.check.CalibrationPoint.Direction;

/**
 * How well an instrument follows its line, in the terms of ISO 7500-1, all in percent and none
 * negative. Points below a tenth of the greatest count for none but zero. Each term is defined in
 * docs/calibration-terms.md.
 *
 * @param greatestErrorPercent the greatest |q|, q the relative error of the indication
 * @param repeatabilityPercent the greatest b, the spread of q between equal points of one
 *     direction; null with one round
 * @param reversibilityPercent the greatest |v|, between the means of rising and falling points;
 *     null where no point was taken both ways
 * @param zeroReturnPercent the greatest zero left over after unloading, of the greatest point; null
 *     where zero was not read again
 */
public record CalibrationTerms(
    double greatestErrorPercent,
    Double repeatabilityPercent,
    Double reversibilityPercent,
    Double zeroReturnPercent) {
  private static final double LEAST_SHARE_OF_GREATEST = 0.1;

  /** So that a tenth of the greatest point is not lost by the rounding of its last digit. */
  private static final double ROUNDING = 1e-12;

  /**
   * @param points in the order in which they were taken
   * @param indicated for each point, in the unit of {@code applied}
   */
  static CalibrationTerms of(List<CalibrationPoint> points, double[] indicated) {
    double greatest = points.stream().mapToDouble(CalibrationPoint::applied).max().orElse(0);
    double least = LEAST_SHARE_OF_GREATEST * greatest * (1 - ROUNDING);
    double greatestError = 0;
    Map<Double, BothWays> errorsByPoint = new LinkedHashMap<>();
    for (int i = 0; i < indicated.length; i++) {
      CalibrationPoint point = points.get(i);
      if (point.applied() < least || point.applied() == 0) {
        continue;
      }
      double error = relativeErrorPercent(indicated[i], point.applied());
      greatestError = Math.max(greatestError, Math.abs(error));
      errorsByPoint
          .computeIfAbsent(point.applied(), at -> new BothWays())
          .of(point.direction())
          .add(error);
    }
    return new CalibrationTerms(
        greatestError,
        greatestOf(errorsByPoint.values().stream().map(BothWays::spread).toList()),
        greatestOf(errorsByPoint.values().stream().map(BothWays::gap).toList()),
        zeroReturn(points, indicated, greatest));
  }

  /** q = 100·(Fi − F)/F of ISO 7500-1. */
  static double relativeErrorPercent(double indicated, double applied) {
    return 100 * (indicated - applied) / applied;
  }

  /** b: the greatest less the least of errors at equal points; null of fewer than two. */
  static Double spread(List<Double> errors) {
    if (errors.size() < 2) {
      return null;
    }
    double max = errors.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    double min = errors.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    return max - min;
  }

  /** Each zero on the way down against the zero that its own round began with. */
  private static Double zeroReturn(
      List<CalibrationPoint> points, double[] indicated, double greatest) {
    Double before = null;
    List<Double> left = new ArrayList<>();
    for (int i = 0; i < indicated.length; i++) {
      CalibrationPoint point = points.get(i);
      if (point.applied() != 0) {
        continue;
      }
      if (point.direction() == Direction.UP) {
        before = indicated[i];
      } else if (before != null) {
        left.add(100 * Math.abs(indicated[i] - before) / greatest);
      }
    }
    return greatestOf(left);
  }

  private static Double greatestOf(List<Double> terms) {
    Double greatest = null;
    for (Double term : terms) {
      if (term != null && (greatest == null || term > greatest)) {
        greatest = term;
      }
    }
    return greatest;
  }

  /** The relative errors at one point, rising and falling. */
  private static final class BothWays {
    private final List<Double> up = new ArrayList<>();
    private final List<Double> down = new ArrayList<>();

    List<Double> of(Direction direction) {
      return direction == Direction.UP ? up : down;
    }

    Double spread() {
      List<Double> spreads = new ArrayList<>();
      spreads.add(CalibrationTerms.spread(up));
      spreads.add(CalibrationTerms.spread(down));
      return greatestOf(spreads);
    }

    Double gap() {
      return up.isEmpty() || down.isEmpty() ? null : Math.abs(mean(down) - mean(up));
    }

    private static double mean(List<Double> errors) {
      return errors.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }
  }
}
