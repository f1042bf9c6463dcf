package sagwright.bench.practice;

import java.util.Random;
import sagwright.bench.Calibration;
import sagwright.bench.Reading;

/**
 * The bench itself: a shaft that gives, settles and creeps under the hand's force, read by a load
 * cell and a gauge with their noise.
 */
final class PracticeBench {
  private static final double SETTLING_N = 0.8;
  private static final double CREEP_TIME_S = 20;
  private static final double HUM_HZ = 50;
  private static final long REST_COUNTS = 48_213;
  private static final long REST_STEPS = 1_207;

  private final Calibration calibration;
  private final PracticeOptions options;
  private final PracticeHand hand;
  private final Random random;
  private volatile double flexibilityMmPerN;
  private volatile double hungN;
  private volatile double liftedMm;
  private double creepMm;
  private double timeS;
  private double nextGaugeS;

  PracticeBench(Calibration calibration, PracticeOptions options, PracticeHand hand) {
    this.calibration = calibration;
    this.options = options;
    this.hand = hand;
    this.random = new Random(options.seed() ^ 0x5DEECE66DL);
  }

  /**
   * @param mmPerN what the shaft gives per newton, frame included; 0 where the bench is empty
   */
  void lay(double mmPerN) {
    flexibilityMmPerN = mmPerN;
  }

  /** Masses on the hook: the load cell feels them, no shaft bends. */
  void hang(double loadN) {
    hungN = loadN;
  }

  /** A block under the stem. */
  void lift(double mm) {
    liftedMm = mm;
  }

  Reading next(double seconds, int seq, long timeMicros) {
    timeS += seconds;
    double flexibility = flexibilityMmPerN;
    double forceN = flexibility > 0 ? hand.step(seconds) : 0;
    double elasticMm = forceN * flexibility;
    creepMm += (options.creepShare() * elasticMm - creepMm) * seconds / CREEP_TIME_S;
    double toe = flexibility > 0 ? options.toeMm() * (1 - Math.exp(-forceN / SETTLING_N)) : 0;
    double shownN =
        forceN
            + hungN
            + options.loadNoiseN() * random.nextGaussian()
            + options.humN() * Math.sin(2 * Math.PI * HUM_HZ * timeS);
    double shownMm =
        elasticMm + toe + creepMm + liftedMm + options.gaugeNoiseMm() * random.nextGaussian();
    return new Reading(seq, timeMicros, counts(shownN), steps(shownMm), flags(shownN));
  }

  private Integer counts(double shownN) {
    long counts = REST_COUNTS + calibration.load().counts(shownN);
    return (int) Math.max(Reading.LEAST_COUNTS, Math.min(Reading.GREATEST_COUNTS, counts));
  }

  private int flags(double shownN) {
    long counts = REST_COUNTS + calibration.load().counts(shownN);
    boolean atEnd = counts <= Reading.LEAST_COUNTS || counts >= Reading.GREATEST_COUNTS;
    return atEnd ? Reading.LOAD_AT_END_STOP : 0;
  }

  private Long steps(double shownMm) {
    if (timeS < nextGaugeS) {
      return null;
    }
    nextGaugeS = Math.max(nextGaugeS + 1 / options.gaugePerSecond(), timeS);
    return REST_STEPS + calibration.gauge().steps(shownMm);
  }
}
