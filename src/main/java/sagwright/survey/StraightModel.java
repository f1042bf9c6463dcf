package sagwright.survey;

import java.util.List;
import sagwright.beam.FlexibilityNodes;

/** The modulus runs straight from the tip end to the butt end: parameters are those two. */
final class StraightModel implements AlongModel {
  private final List<RunObservation> runs;
  private final double lengthMm;
  private final FlexibilityNodes[] atLoad;
  private final FlexibilityNodes[] atGauge;

  StraightModel(List<RunObservation> runs) {
    this.runs = runs;
    this.lengthMm = runs.get(0).taper().lengthMm();
    atLoad = runs.stream().map(RunObservation::atLoad).toArray(FlexibilityNodes[]::new);
    atGauge =
        runs.stream()
            .map(run -> run.springNPerMm() == 0 ? null : run.atGauge())
            .toArray(FlexibilityNodes[]::new);
  }

  @Override
  public int parameterCount() {
    return 2;
  }

  @Override
  public double[] start(double modulusMPa, double ratio) {
    return new double[] {modulusMPa, modulusMPa};
  }

  @Override
  public void show(double[] parameters, double[] shownMPa, double[][] change) {
    double[] load = new double[3];
    double[] gauge = new double[3];
    for (int i = 0; i < shownMPa.length; i++) {
      RunObservation run = runs.get(i);
      addUp(atLoad[i], run.ratio(), parameters, load);
      addUp(atGauge[i], run.ratio(), parameters, gauge);
      shownMPa[i] = run.shownMPa(load[0], gauge[0]);
      change[i][0] = run.shownChange(load[0], gauge[0], load[1], gauge[1]);
      change[i][1] = run.shownChange(load[0], gauge[0], load[2], gauge[2]);
    }
  }

  /** Fills in F and how it changes with the modulus at the tip and at the butt. */
  private void addUp(FlexibilityNodes nodes, double ratio, double[] parameters, double[] sums) {
    sums[0] = 0;
    sums[1] = 0;
    sums[2] = 0;
    if (nodes == null) {
      return;
    }
    for (int k = 0; k < nodes.xMm().length; k++) {
      double t = nodes.xMm()[k] / lengthMm;
      double modulus = parameters[0] + t * (parameters[1] - parameters[0]);
      double here = (nodes.bendingPerMm()[k] + ratio * nodes.shearPerMm()[k]) / modulus;
      sums[0] += here;
      sums[1] -= (1 - t) * here / modulus;
      sums[2] -= t * here / modulus;
    }
  }
}
