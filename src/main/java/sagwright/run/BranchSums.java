package sagwright.run;

/**
 * Running sums of powers and products over the clean samples of a branch, block after block, so
 * that the line or the parabola through any stretch of blocks follows at once. Deflection is x,
 * load is y, both reckoned from the branch's own centre.
 */
final class BranchSums {
  private static final int SUMS = 9;

  // n, x, y, xx, xy, yy, xxx, xxxx, xxy of all blocks before a block
  private final double[] before;

  BranchSums(int blocks) {
    before = new double[SUMS * (blocks + 1)];
  }

  /** Starts a block with the sums of all before it. */
  void startBlock(int block) {
    System.arraycopy(before, SUMS * block, before, SUMS * (block + 1), SUMS);
  }

  /** Counts a sample into a started block. */
  void add(int block, double x, double y) {
    int at = SUMS * (block + 1);
    double xx = x * x;
    before[at]++;
    before[at + 1] += x;
    before[at + 2] += y;
    before[at + 3] += xx;
    before[at + 4] += x * y;
    before[at + 5] += y * y;
    before[at + 6] += xx * x;
    before[at + 7] += xx * xx;
    before[at + 8] += xx * y;
  }

  /** Samples in a stretch of blocks, the last excluded. */
  int samples(int from, int to) {
    return (int) sum(0, from, to);
  }

  double meanDeflection(int block) {
    return sum(1, block, block + 1) / sum(0, block, block + 1);
  }

  double meanLoad(int block) {
    return sum(2, block, block + 1) / sum(0, block, block + 1);
  }

  /** What the line through a stretch of blocks needs. */
  LineSums line(int from, int to) {
    double n = sum(0, from, to);
    double x = sum(1, from, to);
    double y = sum(2, from, to);
    return new LineSums(
        (int) n,
        x / n,
        y / n,
        sum(3, from, to) - x * x / n,
        sum(4, from, to) - x * y / n,
        sum(5, from, to) - y * y / n);
  }

  /**
   * The parabola of load on deflection through a stretch.
   *
   * @param curvature factor of the square of the deflection, in N/mm²
   * @param gain what the square takes off the line's residual squares, in N²
   * @param squares the residual squares it leaves, in N²
   */
  record Parabola(double curvature, double gain, double squares) {}

  Parabola parabola(int from, int to) {
    LineSums line = line(from, to);
    double n = line.n();
    double m = line.meanX();
    double s2 = sum(3, from, to);
    double s3 = sum(6, from, to);
    double cube = s3 - 3 * m * s2 + 2 * n * m * m * m;
    double fourth = sum(7, from, to) - 4 * m * s3 + 6 * m * m * s2 - 3 * n * m * m * m * m;
    double sumY = sum(2, from, to);
    double xy = sum(4, from, to);
    double squareY = sum(8, from, to) - 2 * m * xy + m * m * sumY;
    // the square freed of its own line stands apart from the straight line
    double qq = fourth - line.sxx() * line.sxx() / n - cube * cube / line.sxx();
    double qy = squareY - line.sxx() / n * sumY - cube / line.sxx() * line.sxy();
    double straight = line.syy() - line.sxy() * line.sxy() / line.sxx();
    double gain = qq > 0 ? qy * qy / qq : 0;
    return new Parabola(qq > 0 ? qy / qq : 0, gain, Math.max(0, straight - gain));
  }

  private double sum(int which, int from, int to) {
    return before[SUMS * to + which] - before[SUMS * from + which];
  }
}
