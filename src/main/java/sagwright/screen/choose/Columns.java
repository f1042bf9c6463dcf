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
    return 482 + more() * 0.55;
  }

  double verdict() {
    return lineTo() + 18;
  }

  double chanceEnds() {
    return lineTo() + 154;
  }

  double modulusEnds() {
    return lineTo() + 220 + more() * 0.06;
  }

  double spareEnds() {
    return lineTo() + 278 + more() * 0.12;
  }

  double massEnds() {
    return lineTo() + 334 + more() * 0.18;
  }

  double balanceEnds() {
    return lineTo() + 396 + more() * 0.24;
  }

  double grain() {
    return lineTo() + 418 + more() * 0.27;
  }

  double seasoning() {
    return lineTo() + 530 + more() * 0.36;
  }
}
