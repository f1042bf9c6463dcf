package sagwright.grade;

/**
 * A figure that is asked for, and how far it may be off to either side.
 *
 * @param tolerance null where none is stated: then nothing is out of it
 */
public record Aim(double value, Double tolerance) {
  /** Whether a figure lies further off than the tolerance; a figure on the edge does not. */
  public boolean isMissedBy(double figure) {
    return tolerance != null && Math.abs(figure - value) > tolerance;
  }
}
