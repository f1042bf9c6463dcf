package sagwright.uncertainty;

/** A 95 % interval, in the unit that the name of the holder states. */
public record Interval(double low, double high) {
  /** The first-order one: value ± 1.96 u. */
  public static Interval around(Estimate estimate) {
    return new Interval(
        estimate.value() - estimate.halfWidth95(), estimate.value() + estimate.halfWidth95());
  }
}
