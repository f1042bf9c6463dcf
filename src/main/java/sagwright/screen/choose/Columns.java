package sagwright.screen.choose;

/**
 * Where the columns of the list lie, from its left edge in units of zoom 1. What a wider window has
 * to spare goes to the stiffness line first.
 */
record Columns(double width) {
  private static final double BASE = 1112;
  static final double NUMBER = 2;
  static final double SAMPLE = 18;
  static final double SAMPLE_LENGTH = 24;
  static final double TAG_ENDS = 136;
  static final double TAG_WIDTH = 88;
  static final double LINE_FROM = 150;

  private double more() {
    return Math.max(0, width - BASE);
  }

  double lineTo() {
    return 540 + more() * 0.6;
  }

  double verdict() {
    return lineTo() + 24;
  }

  double chanceEnds() {
    return lineTo() + 168;
  }

  double modulusEnds() {
    return lineTo() + 238 + more() * 0.08;
  }

  double spareEnds() {
    return lineTo() + 298 + more() * 0.16;
  }

  double massEnds() {
    return lineTo() + 358 + more() * 0.24;
  }

  double balanceEnds() {
    return lineTo() + 422 + more() * 0.32;
  }

  double stage() {
    return lineTo() + 442 + more() * 0.36;
  }
}
