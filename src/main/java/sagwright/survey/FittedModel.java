package sagwright.survey;

import java.util.List;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A model fitted to some runs with some weights.
 *
 * @param bordersMm where the program has put the borders; empty but for pieces
 * @param estimator how parameters (and after them borders) follow what the runs showed
 */
record FittedModel(
    ModelShape shape, double[] bordersMm, ModelFit fit, RealMatrix change, Estimator estimator) {
  /** Step of the central difference by which a border's effect is found. */
  private static final double BORDER_STEP_MM = 0.5;

  /** Null where these runs cannot bear the model. */
  static FittedModel of(ModelShape shape, List<RunObservation> runs, Weighting weighting) {
    double[] borders = new double[0];
    if (shape.kind() == ModelKind.PIECES) {
      borders = new BorderSearch(runs, weighting).borders(shape.pieces());
      if (borders == null) {
        return null;
      }
    }
    double[] moduli = runs.stream().mapToDouble(RunObservation::modulusMPa).toArray();
    double ratio = runs.get(0).ratio();
    ModelFit fit = ModelFit.of(model(shape, runs, borders), moduli, ratio, weighting);
    if (fit == null) {
      return null;
    }
    RealMatrix change = withBorders(fit, shape, runs, borders);
    Estimator estimator = Estimator.of(change, weighting);
    if (estimator == null && borders.length > 0) {
      // A border between two like pieces cannot be told: the moduli for these borders still can.
      change = fit.change();
      estimator = Estimator.of(change, weighting);
    }
    return estimator == null ? null : new FittedModel(shape, borders, fit, change, estimator);
  }

  /** Whether every parameter is above 0: no wood has another. */
  boolean isWood() {
    for (double parameter : fit.parameters()) {
      if (!(parameter > 0)) {
        return false;
      }
    }
    return true;
  }

  static AlongModel model(ModelShape shape, List<RunObservation> runs, double[] bordersMm) {
    return switch (shape.kind()) {
      case ONE -> new PiecesModel(runs, false);
      case RATIO -> new PiecesModel(runs, true);
      case STRAIGHT -> new StraightModel(runs);
      case PIECES -> new PiecesModel(runs, false, bordersMm);
    };
  }

  private static RealMatrix withBorders(
      ModelFit fit, ModelShape shape, List<RunObservation> runs, double[] borders) {
    RealMatrix moduli = fit.change();
    int p = moduli.getColumnDimension();
    RealMatrix all = MatrixUtils.createRealMatrix(runs.size(), p + borders.length);
    all.setSubMatrix(moduli.getData(), 0, 0);
    for (int j = 0; j < borders.length; j++) {
      double[] up = shownWithBorder(fit, shape, runs, borders, j, BORDER_STEP_MM);
      double[] down = shownWithBorder(fit, shape, runs, borders, j, -BORDER_STEP_MM);
      for (int i = 0; i < up.length; i++) {
        all.setEntry(i, p + j, (up[i] - down[i]) / (2 * BORDER_STEP_MM));
      }
    }
    return all;
  }

  private static double[] shownWithBorder(
      ModelFit fit,
      ModelShape shape,
      List<RunObservation> runs,
      double[] borders,
      int border,
      double byMm) {
    double[] moved = borders.clone();
    moved[border] += byMm;
    double[] shown = new double[runs.size()];
    double[][] change = new double[runs.size()][fit.parameters().length];
    model(shape, runs, moved).show(fit.parameters(), shown, change);
    return shown;
  }
}
