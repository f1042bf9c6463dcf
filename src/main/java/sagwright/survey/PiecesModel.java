package sagwright.survey;

import java.util.Arrays;
import java.util.List;

/**
 * Constant between borders: parameters are the moduli from the tip on, then r where it is fitted.
 * With no border it is one modulus for the whole shaft.
 */
final class PiecesModel implements AlongModel {
  private final List<RunObservation> runs;
  private final boolean ratioFitted;
  private final int pieces;

  /** Run, piece, the four sums of {@link PieceFlexibility}. */
  private final double[][][] share;

  /**
   * @param bordersMm between the pieces, rising
   */
  PiecesModel(List<RunObservation> runs, boolean ratioFitted, double... bordersMm) {
    this.runs = runs;
    this.ratioFitted = ratioFitted;
    this.pieces = bordersMm.length + 1;
    double[] ends = Arrays.copyOf(bordersMm, pieces);
    ends[pieces - 1] = Double.MAX_VALUE;
    share = new double[runs.size()][][];
    for (int i = 0; i < share.length; i++) {
      share[i] = new PieceFlexibility(runs.get(i)).below(ends);
      for (int j = pieces - 1; j > 0; j--) {
        for (int k = 0; k < PieceFlexibility.SUMS; k++) {
          share[i][j][k] -= share[i][j - 1][k];
        }
      }
    }
  }

  @Override
  public int parameterCount() {
    return pieces + (ratioFitted ? 1 : 0);
  }

  @Override
  public double[] start(double modulusMPa, double ratio) {
    double[] start = new double[parameterCount()];
    Arrays.fill(start, 0, pieces, modulusMPa);
    if (ratioFitted) {
      start[pieces] = ratio;
    }
    return start;
  }

  @Override
  public void show(double[] parameters, double[] shownMPa, double[][] change) {
    for (int i = 0; i < shownMPa.length; i++) {
      RunObservation run = runs.get(i);
      double r = ratioFitted ? parameters[pieces] : run.ratio();
      double atLoad = 0;
      double atGauge = 0;
      double shearAtLoad = 0;
      double shearAtGauge = 0;
      for (int j = 0; j < pieces; j++) {
        double[] s = share[i][j];
        atLoad += (s[0] + r * s[1]) / parameters[j];
        atGauge += (s[2] + r * s[3]) / parameters[j];
        shearAtLoad += s[1] / parameters[j];
        shearAtGauge += s[3] / parameters[j];
      }
      shownMPa[i] = run.shownMPa(atLoad, atGauge);
      for (int j = 0; j < pieces; j++) {
        double[] s = share[i][j];
        double per = -1 / (parameters[j] * parameters[j]);
        change[i][j] =
            run.shownChange(atLoad, atGauge, per * (s[0] + r * s[1]), per * (s[2] + r * s[3]));
      }
      if (ratioFitted) {
        change[i][pieces] = run.shownChange(atLoad, atGauge, shearAtLoad, shearAtGauge);
      }
    }
  }
}
