package sagwright.run;

/**
 * One loading and unloading, sample by sample; the three arrays are of one length.
 *
 * @param timeS seconds, not falling (equal stamps occur)
 * @param loadN newtons, from any zero
 * @param deflectionMm millimetres the way the load pushes, from any zero
 */
public record Samples(double[] timeS, double[] loadN, double[] deflectionMm) implements Readings {
  public Samples {
    if (timeS.length != loadN.length || timeS.length != deflectionMm.length) {
      throw new IllegalArgumentException("the three arrays of a run are of one length");
    }
  }

  public int size() {
    return timeS.length;
  }
}
