package sagwright.run;

/** What a bench showed: a run sample by sample, or pairs noted by hand. */
public sealed interface Readings permits Samples, HandReadings {
  /** Loads in N, in the order in which they came. */
  double[] loadN();

  /** Deflections in mm, one for each load. */
  double[] deflectionMm();
}
