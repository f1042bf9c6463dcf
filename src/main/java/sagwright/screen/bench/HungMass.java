package sagwright.screen.bench;

import sagwright.check.LocalGravity;
import sagwright.run.HandReadings;

/** Masses hung become loads: m·g·(1 − 1.2/8000), the air's lift on steel taken off. */
final class HungMass {
  private HungMass() {}

  static HandReadings pairs(BenchActions.HandRead read) {
    int n = read.hung().size();
    double[] loadN = new double[n];
    double[] deflectionMm = new double[n];
    for (int i = 0; i < n; i++) {
      double hung = read.hung().get(i);
      loadN[i] = read.massesHung() ? LocalGravity.STANDARD_CGPM_1901.loadN(hung) : hung;
      deflectionMm[i] = read.dialMm().get(i);
    }
    return new HandReadings(loadN, deflectionMm);
  }
}
