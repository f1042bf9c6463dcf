package sagwright.run;

/** Settled pairs of load (N) and deflection (mm) noted by hand, in any order. */
public record HandReadings(double[] loadN, double[] deflectionMm) implements Readings {
  public HandReadings {
    if (loadN.length != deflectionMm.length) {
      throw new IllegalArgumentException("every load of a hand-read run has its deflection");
    }
  }

  public int size() {
    return loadN.length;
  }
}
