package sagwright.check;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * An instrument's factor: the slope of the ordinary straight line of what was applied on what was
 * read, through all points (docs/contract.md, section 9).
 *
 * <p>Units: those of {@link CalibrationPoint#applied} (N or mm) and of its reading (counts or
 * steps).
 *
 * @param slope applied per reading: N per count, mm per step; may be negative, never 0
 * @param slopeStdUncertainty residualStd/√Σ(reading − mean)²
 * @param intercept the line at reading 0
 * @param residualStd standard deviation of the points about the line, on n − 2
 * @param residuals applied less the line, in the order of the points
 * @param greatestPoint the greatest that was applied
 * @param terms how well the instrument follows the line
 */
public record LineCalibration(
    double slope,
    double slopeStdUncertainty,
    double intercept,
    double residualStd,
    double[] residuals,
    double greatestPoint,
    CalibrationTerms terms) {
  private static final int LEAST_POINTS = 3;

  /**
   * @throws PoorPointsException with fewer than three points, or all readings or all applied alike
   */
  public static LineCalibration of(List<CalibrationPoint> points) throws PoorPointsException {
    if (points.size() < LEAST_POINTS) {
      throw new PoorPointsException(
          "a line wants " + LEAST_POINTS + " points or more, here are " + points.size());
    }
    if (points.stream().mapToDouble(CalibrationPoint::reading).distinct().count() < 2) {
      throw new PoorPointsException("all readings are alike: the instrument followed nothing");
    }
    if (points.stream().mapToDouble(CalibrationPoint::applied).distinct().count() < 2) {
      throw new PoorPointsException("all points are alike: a line wants two different ones");
    }
    return through(points);
  }

  /**
   * Two passes about the means: residuals a millionth of the points keep their digits, which sums
   * of plain squares would lose.
   */
  private static LineCalibration through(List<CalibrationPoint> points) throws PoorPointsException {
    int n = points.size();
    double meanReading = mean(points, CalibrationPoint::reading);
    double meanApplied = mean(points, CalibrationPoint::applied);
    double squares = 0;
    double products = 0;
    for (CalibrationPoint point : points) {
      double reading = point.reading() - meanReading;
      squares += reading * reading;
      products += reading * (point.applied() - meanApplied);
    }
    double slope = products / squares;
    if (slope == 0 || !Double.isFinite(slope)) {
      throw new PoorPointsException("the readings do not follow what was applied");
    }
    double[] residuals = new double[n];
    double[] indicated = new double[n];
    double residualSquares = 0;
    for (int i = 0; i < n; i++) {
      indicated[i] = meanApplied + slope * (points.get(i).reading() - meanReading);
      residuals[i] = points.get(i).applied() - indicated[i];
      residualSquares += residuals[i] * residuals[i];
    }
    double residualStd = Math.sqrt(residualSquares / (n - 2));
    return new LineCalibration(
        slope,
        residualStd / Math.sqrt(squares),
        meanApplied - slope * meanReading,
        residualStd,
        residuals,
        points.stream().mapToDouble(CalibrationPoint::applied).max().orElseThrow(),
        CalibrationTerms.of(points, indicated));
  }

  private static double mean(List<CalibrationPoint> points, ToDoubleFunction<CalibrationPoint> of) {
    return points.stream().mapToDouble(of).average().orElseThrow();
  }

  /** What a calibration file states of the factor. */
  public double scaleUncertaintyPercent() {
    return 100 * slopeStdUncertainty / Math.abs(slope);
  }

  /** Null where the terms keep no class. */
  public ForceClass forceClass() {
    return ForceClass.of(terms);
  }
}
