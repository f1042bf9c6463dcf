package sagwright.run;

/**
 * A stretch of a loading branch.
 *
 * @param from first block
 * @param to one past the last block
 * @param low where it begins, in shares of the greatest load
 * @param high where it ends, likewise
 * @param slope N/mm
 * @param variance of the slope by chance, (N/mm)²
 * @param bias by how much the tail of the toe lowers the slope, N/mm
 * @param clarity squared correlation of load and deflection
 */
record Stretch(
    int from,
    int to,
    double low,
    double high,
    double slope,
    double variance,
    double bias,
    double clarity) {
  /** What the slope may be off, squared: by chance and by the tail of the toe. */
  double cost() {
    return variance + bias * bias;
  }

  double middle() {
    return (low + high) / 2;
  }
}
