package sagwright.bench.practice;

/**
 * How a practice bench behaves. The figures of {@link #BELIEVABLE} are those of a plain home-made
 * bench: common practice, no source.
 *
 * @param seed the same seed, the same noise and the same hand
 * @param readingsPerSecond of the load
 * @param gaugePerSecond new values of the gauge, not above {@code readingsPerSecond}
 * @param loadNoiseN standard deviation of a reading
 * @param gaugeNoiseMm standard deviation of a reading, beside the gauge's own steps
 * @param toeMm how far the shaft settles on its supports under the first newton or two
 * @param creepShare how much farther, in parts of its elastic bend, the shaft gives in time
 * @param unevenness of the hand's speed: 0 for a machine's, 1 for one that often stops on the way
 * @param humN amplitude of mains hum at 50 Hz in the load
 */
public record PracticeOptions(
    long seed,
    double readingsPerSecond,
    double gaugePerSecond,
    double loadNoiseN,
    double gaugeNoiseMm,
    double toeMm,
    double creepShare,
    double unevenness,
    double humN) {
  public static final PracticeOptions BELIEVABLE =
      new PracticeOptions(20_260_302, 80, 20, 0.006, 0.0008, 0.03, 0.002, 0.45, 0.002);

  public PracticeOptions withSeed(long other) {
    return new PracticeOptions(
        other,
        readingsPerSecond,
        gaugePerSecond,
        loadNoiseN,
        gaugeNoiseMm,
        toeMm,
        creepShare,
        unevenness,
        humN);
  }
}
