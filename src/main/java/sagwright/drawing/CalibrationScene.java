package sagwright.drawing;

import java.util.List;
import sagwright.check.CalibrationPoint;
import sagwright.check.LineCalibration;

/**
 * A calibration to be drawn.
 *
 * @param points what was applied in N or mm, what was read in counts or steps
 * @param line null where there is none yet
 * @param isLoad whether the load is calibrated, else the gauge
 */
public record CalibrationScene(
    List<CalibrationPoint> points, LineCalibration line, boolean isLoad) {
  public CalibrationScene {
    points = List.copyOf(points);
  }
}
