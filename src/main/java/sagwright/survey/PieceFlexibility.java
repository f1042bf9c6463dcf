package sagwright.survey;

import sagwright.beam.FlexibilityNodes;

/**
 * How much of a run's flexibility, with a modulus of 1 MPa, comes from short of a place x: bending
 * and shear, for load and gauge where they stand (c,g) and both at the gauge (g,g).
 */
final class PieceFlexibility {
  /** Four sums: bending and shear of F(c,g), bending and shear of F(g,g), in 1/mm. */
  static final int SUMS = 4;

  private final RunObservation run;

  PieceFlexibility(RunObservation run) {
    this.run = run;
  }

  /** The four sums short of each place. */
  double[][] below(double... placesMm) {
    double[][] below = new double[placesMm.length][SUMS];
    addUp(run.atLoad(placesMm), placesMm, below, 0);
    if (run.springNPerMm() != 0) {
      addUp(run.atGauge(placesMm), placesMm, below, 2);
    }
    return below;
  }

  private static void addUp(FlexibilityNodes nodes, double[] places, double[][] below, int at) {
    double bending = 0;
    double shear = 0;
    int node = 0;
    for (int p = 0; p < places.length; p++) {
      while (node < nodes.xMm().length && nodes.xMm()[node] < places[p]) {
        bending += nodes.bendingPerMm()[node];
        shear += nodes.shearPerMm()[node];
        node++;
      }
      below[p][at] = bending;
      below[p][at + 1] = shear;
    }
  }
}
