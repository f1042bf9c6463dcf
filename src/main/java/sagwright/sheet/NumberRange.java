package sagwright.sheet;

/** What a number may be; every one is finite besides. */
enum NumberRange {
  ANY(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, ""),
  NOT_ZERO(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, "must not be 0"),
  NOT_NEGATIVE(0, Double.POSITIVE_INFINITY, "must not be below 0"),
  ABOVE_ZERO(Double.MIN_VALUE, Double.POSITIVE_INFINITY, "must be above 0"),
  SHARE(0, 1, "must be between 0 and 1"),
  MOISTURE(0, 200, "must be between 0 and 200");

  private final double least;
  private final double greatest;
  private final String rule;

  NumberRange(double least, double greatest, String rule) {
    this.least = least;
    this.greatest = greatest;
    this.rule = rule;
  }

  boolean holds(double value) {
    return least <= value && value <= greatest && (this != NOT_ZERO || value != 0);
  }

  String rule() {
    return rule;
  }
}
