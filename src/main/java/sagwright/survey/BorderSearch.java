package sagwright.survey;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds the borders between a given number of pieces of even modulus that leave the least weighted
 * squares.
 *
 * <p>For given borders the runs' gives are straight functions of the pieces' compliances 1/E, so
 * that each candidate costs the solution of a few normal equations: every combination on a grid is
 * tried, then each border is moved in turn to its best place (Brent's method) until none gains. No
 * piece is shorter than {@link #LEAST_PIECE_SHARE} of what the supports reach, and none softer or
 * stiffer than a third or three times the runs' mean, which no wood is.
 */
final class BorderSearch {
  static final double LEAST_PIECE_SHARE = 0.1;
  private static final double MOST_CONTRAST = 3;
  private static final int GRID = 60;
  private static final int SWEEPS = 12;
  private static final double GAIN_WORTH_A_SWEEP = 1e-5;
  private static final double PLACE_TOLERANCE_MM = 0.01;

  private final List<RunObservation> runs;
  private final List<PieceFlexibility> flexibilities;
  private final Weighting weighting;
  private final double[] target;
  private final double fromMm;
  private final double toMm;
  private final double[][] gridColumns;

  BorderSearch(List<RunObservation> runs, Weighting weighting) {
    this.runs = runs;
    this.weighting = weighting;
    this.flexibilities = runs.stream().map(PieceFlexibility::new).toList();
    this.target = weighting.weigh(runs.stream().mapToDouble(RunObservation::modulusMPa).toArray());
    this.fromMm = runs.stream().mapToDouble(r -> r.setUp().supportAMm()).min().orElseThrow();
    this.toMm = runs.stream().mapToDouble(r -> r.setUp().supportBMm()).max().orElseThrow();
    this.gridColumns = columnsBelow(grid());
  }

  private double[] grid() {
    double[] grid = new double[GRID - 1];
    for (int i = 1; i < GRID; i++) {
      grid[i - 1] = gridMm(i);
    }
    return grid;
  }

  private double gridMm(int i) {
    return fromMm + (toMm - fromMm) * i / GRID;
  }

  /** For each place the weighed column of what lies short of it, then that of the whole shaft. */
  private double[][] columnsBelow(double... placesMm) {
    double[] places = Arrays.copyOf(placesMm, placesMm.length + 1);
    places[placesMm.length] = Double.MAX_VALUE;
    double[][] columns = new double[places.length][runs.size()];
    double mean = meanModulusMPa();
    for (int i = 0; i < runs.size(); i++) {
      RunObservation run = runs.get(i);
      double given = run.givenMmPerN();
      double[][] below = flexibilities.get(i).below(places);
      double spring = given * run.springNPerMm();
      double r = run.ratio();
      for (int p = 0; p < places.length; p++) {
        double[] s = below[p];
        double share = (s[0] + r * s[1] - spring * (s[2] + r * s[3])) / given;
        columns[p][i] = share * run.modulusMPa() / mean;
      }
    }
    for (int p = 0; p < places.length; p++) {
      columns[p] = weighting.weigh(columns[p]);
    }
    return columns;
  }

  private double meanModulusMPa() {
    return runs.stream().mapToDouble(RunObservation::modulusMPa).average().orElseThrow();
  }

  /**
   * The best borders for this many pieces, two or more; null where no choice can be told from
   * another.
   */
  double[] borders(int pieces) {
    int[] at = new int[pieces - 1];
    int apart = (int) Math.ceil(LEAST_PIECE_SHARE * GRID);
    Best best = new Best();
    tryAll(at, 0, apart, apart, best);
    if (best.at == null) {
      return null;
    }
    double[] borders = Arrays.stream(best.at).mapToDouble(this::gridMm).toArray();
    return refined(borders);
  }

  private static final class Best {
    private int[] at;
    private double squares = Double.MAX_VALUE;
  }

  private void tryAll(int[] at, int border, int from, int apart, Best best) {
    if (border == at.length) {
      double[][] below = new double[at.length + 1][];
      for (int j = 0; j < at.length; j++) {
        below[j] = gridColumns[at[j] - 1];
      }
      below[at.length] = gridColumns[GRID - 1];
      double squares = squaresLeft(below);
      if (squares < best.squares) {
        best.squares = squares;
        best.at = at.clone();
      }
      return;
    }
    int last = GRID - apart * (at.length - border);
    for (int i = from; i <= last; i++) {
      at[border] = i;
      tryAll(at, border + 1, i + apart, apart, best);
    }
  }

  private double[] refined(double[] borders) {
    double least = LEAST_PIECE_SHARE * (toMm - fromMm);
    double step = (toMm - fromMm) / GRID;
    double squares = squaresAt(borders);
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double before = squares;
      for (int j = 0; j < borders.length; j++) {
        double low = Math.max(borders[j] - step, (j == 0 ? fromMm : borders[j - 1]) + least);
        double high =
            Math.min(borders[j] + step, (j == borders.length - 1 ? toMm : borders[j + 1]) - least);
        if (high - low > PLACE_TOLERANCE_MM) {
          squares = moved(borders, j, low, high, squares);
        }
      }
      if (before - squares < GAIN_WORTH_A_SWEEP) {
        break;
      }
    }
    return borders;
  }

  /** Moves one border to its best place between two others, if that gains anything. */
  private double moved(double[] borders, int j, double low, double high, double squares) {
    double[] tried = borders.clone();
    double place =
        new BrentOptimizer(1e-9, PLACE_TOLERANCE_MM)
            .optimize(
                new MaxEval(200),
                GoalType.MINIMIZE,
                new SearchInterval(low, high),
                new UnivariateObjectiveFunction(
                    x -> {
                      tried[j] = x;
                      return squaresAt(tried);
                    }))
            .getPoint();
    tried[j] = place;
    double found = squaresAt(tried);
    if (found < squares) {
      borders[j] = place;
      return found;
    }
    return squares;
  }

  private double squaresAt(double[] borders) {
    return squaresLeft(columnsBelow(borders));
  }

  /**
   * The weighted squares left by the best compliances, each in units of the mean's; very large
   * where none will do.
   */
  private double squaresLeft(double[][] below) {
    int m = below.length;
    int n = target.length;
    double[][] columns = new double[m][];
    columns[0] = below[0];
    for (int j = 1; j < m; j++) {
      columns[j] = new double[n];
      for (int i = 0; i < n; i++) {
        columns[j][i] = below[j][i] - below[j - 1][i];
      }
    }
    double[] compliance = NormalEquations.solve(columns, target);
    if (compliance == null) {
      return UNUSABLE;
    }
    for (double ofMean : compliance) {
      if (!(ofMean > 1 / MOST_CONTRAST && ofMean < MOST_CONTRAST)) {
        return UNUSABLE;
      }
    }
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double left = target[i];
      for (int j = 0; j < m; j++) {
        left -= columns[j][i] * compliance[j];
      }
      squares += left * left;
    }
    return squares;
  }

  private static final double UNUSABLE = 1e300;
}
