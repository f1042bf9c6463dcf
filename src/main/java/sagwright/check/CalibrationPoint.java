package sagwright.check;

/**
 * One point of a calibration.
 *
 * @param applied what truly acted: N for a load, mm for a gauge
 * @param reading what the instrument showed, in its own counts or steps
 */
public record CalibrationPoint(double applied, double reading, Direction direction) {
  /** Whether the point was reached with the load rising or falling. */
  public enum Direction {
    UP,
    DOWN
  }
}
