package sagwright.sheet;

/** What a number may be; every one is finite besides, and of a size that can be. */
enum NumberRange {
  /** Readings, times and angles: a clock may count microseconds since 1970. */
  ANY(-1e18, 1e18, ""),
  NOT_ZERO(-1e12, 1e12, "must not be 0"),
  NOT_NEGATIVE(0, 1e12, "must not be below 0"),
  ABOVE_ZERO(0, 1e12, "must be above 0"),
  SHARE(0, 1, "must be between 0 and 1"),
  MOISTURE(0, 200, "must be between 0 and 200");

  /** A thousandth of an atom, were it mm: what has to be above 0 is not less than this. */
  private static final double LEAST_ABOVE_ZERO = 1e-12;

  private final double least;
  private final double greatest;
  private final String rule;

  NumberRange(double least, double greatest, String rule) {
    this.least = least;
    this.greatest = greatest;
    this.rule = rule;
  }

  /** What is wrong with a finite number, as words that may follow it; null where nothing is. */
  String problemOf(double value) {
    if ((this == NOT_ZERO || this == ABOVE_ZERO) && value == 0 || least == 0 && value < 0) {
      return rule;
    }
    if (this == ABOVE_ZERO && value < LEAST_ABOVE_ZERO) {
      return "smaller than anything that can be measured";
    }
    if (least <= value && value <= greatest) {
      return null;
    }
    return this == SHARE || this == MOISTURE ? rule : "greater than anything that can be measured";
  }
}
