package sagwright.survey;

/**
 * A model with nothing free but its parameters.
 *
 * @param pieces how many pieces; 1 for all but {@link ModelKind#PIECES}
 */
record ModelShape(ModelKind kind, int pieces) {
  static final ModelShape ONE = new ModelShape(ModelKind.ONE, 1);
  static final ModelShape RATIO = new ModelShape(ModelKind.RATIO, 1);
  static final ModelShape STRAIGHT = new ModelShape(ModelKind.STRAIGHT, 1);

  static ModelShape inPieces(int pieces) {
    return new ModelShape(ModelKind.PIECES, pieces);
  }

  /** Free borders count. */
  int parameters() {
    return switch (kind) {
      case ONE -> 1;
      case RATIO, STRAIGHT -> 2;
      case PIECES -> 2 * pieces - 1;
    };
  }

  /** Whether so many runs are enough for {@link #aicc}. */
  boolean hasAicc(int runs) {
    return runs - parameters() - 1 > 0;
  }

  /**
   * Akaike's criterion, corrected for few runs: χ² + 2p + 2p(p+1)/(n−p−1) (Hurvich and Tsai 1989;
   * docs/contract.md, section 8).
   */
  double aicc(double chiSquared, int runs) {
    double p = parameters();
    return chiSquared + 2 * p + 2 * p * (p + 1) / (runs - p - 1);
  }
}
