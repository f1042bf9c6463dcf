package sagwright.choose;

import java.util.Arrays;

/**
 * A second solver for the assignment problem, small and plain: shortest augmenting paths with
 * potentials (the Hungarian method as in Burkard, Dell'Amico and Martello, Assignment Problems,
 * SIAM 2009, chapter 4).
 */
final class ShortestAugmentingPath {
  private ShortestAugmentingPath() {}

  /**
   * The greatest sum of gains, one column a row at the most.
   *
   * @param gains row by row, 0 or above; rows all of one length
   */
  static double greatestSum(double[][] gains) {
    int rows = gains.length;
    int columns = Math.max(rows, rows == 0 ? 0 : gains[0].length);
    double[] rowPotential = new double[rows + 1];
    double[] columnPotential = new double[columns + 1];
    int[] rowOf = new int[columns + 1];
    for (int row = 1; row <= rows; row++) {
      int[] before = new int[columns + 1];
      double[] distance = new double[columns + 1];
      boolean[] done = new boolean[columns + 1];
      Arrays.fill(distance, Double.MAX_VALUE);
      rowOf[0] = row;
      int column = 0;
      do {
        done[column] = true;
        double step = Double.MAX_VALUE;
        int next = 0;
        for (int j = 1; j <= columns; j++) {
          if (!done[j]) {
            double reduced =
                -gain(gains, rowOf[column], j) - rowPotential[rowOf[column]] - columnPotential[j];
            if (reduced < distance[j]) {
              distance[j] = reduced;
              before[j] = column;
            }
            if (distance[j] < step) {
              step = distance[j];
              next = j;
            }
          }
        }
        for (int j = 0; j <= columns; j++) {
          if (done[j]) {
            rowPotential[rowOf[j]] += step;
            columnPotential[j] -= step;
          } else {
            distance[j] -= step;
          }
        }
        column = next;
      } while (rowOf[column] != 0);
      while (column != 0) {
        rowOf[column] = rowOf[before[column]];
        column = before[column];
      }
    }
    double sum = 0;
    for (int j = 1; j <= columns; j++) {
      sum += rowOf[j] == 0 ? 0 : gain(gains, rowOf[j], j);
    }
    return sum;
  }

  private static double gain(double[][] gains, int row, int column) {
    return column <= gains[row - 1].length ? gains[row - 1][column - 1] : 0;
  }
}
