package sagwright.check;

/** A centre line with the limits that a steady bench leaves about three times in a thousand. */
public record ControlLimits(double centre, double lower, double upper) {
  static ControlLimits about(double centre, double halfWidth) {
    return new ControlLimits(centre, centre - halfWidth, centre + halfWidth);
  }

  /** Both limits included. */
  public boolean holds(double value) {
    return value >= lower && value <= upper;
  }
}
