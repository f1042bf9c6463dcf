package sagwright.bench;

/**
 * How converter counts become newtons.
 *
 * @param newtonPerCount not 0; negative where counts fall as the shaft is loaded
 * @param scaleUncertaintyPercent standard uncertainty of that factor, one error a run
 * @param uncertaintyN standard uncertainty of one reading, independent from reading to reading
 * @param greatestN the greatest load that the calibration covers
 */
public record LoadCalibration(
    double newtonPerCount, double scaleUncertaintyPercent, double uncertaintyN, double greatestN) {
  public LoadCalibration {
    Calibration.requireFactor("load.newtonPerCount", newtonPerCount);
  }

  /** Counts reckoned from a zero (both in counts) to newtons. */
  public double newtons(double counts, double zeroCounts) {
    return (counts - zeroCounts) * newtonPerCount;
  }

  /** The nearest whole count to a load; the zero is count 0. */
  public long counts(double loadN) {
    return Math.round(loadN / newtonPerCount);
  }
}
