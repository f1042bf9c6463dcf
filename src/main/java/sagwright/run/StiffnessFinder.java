package sagwright.run;

/**
 * From what a bench showed to its stiffness: the slope of load on deflection on the straight part
 * of the loading branch, or through all pairs of a hand-read run.
 */
public final class StiffnessFinder {
  private StiffnessFinder() {}

  /**
   * The stiffness that a run shows, frame in.
   *
   * @param readings eight samples or more, or pairs at three unlike loads or more
   * @param uncertainty of one reading
   * @throws PoorRunException where the run is too poor to give an answer, with the reason
   */
  public static StiffnessFit find(Readings readings, ReadingUncertainty uncertainty)
      throws PoorRunException {
    if (readings instanceof HandReadings pairs) {
      return HandReadFit.of(pairs, uncertainty);
    }
    return SampledRunFit.of((Samples) readings, uncertainty);
  }
}
