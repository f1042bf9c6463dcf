package sagwright.bench;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

/**
 * A test on an invented bench, written down as load against time, and played into a walk as the
 * readings that a head would send. Shaft: 4 N/mm, calibration: 40,000 counts a newton, 1,000 steps
 * a millimetre, both with rests far from count 0.
 */
final class Scene {
  static final double REST_COUNTS = 81_234;
  static final double REST_STEPS = -512;
  private static final double MM_PER_N = 0.25;

  private final double readingsPerSecond;
  private final Random random;
  private final List<double[]> legs = new ArrayList<>();
  private double noiseN = 0.004;
  private double gaugePerSecond = 1e9;
  private double wildShare;
  private int flags;
  private UnaryOperator<Reading> change = r -> r;

  Scene(double readingsPerSecond, long seed) {
    this.readingsPerSecond = readingsPerSecond;
    this.random = new Random(seed);
  }

  /** From the load so far straight to this one. */
  Scene to(double loadN, double seconds) {
    legs.add(new double[] {loadN, seconds});
    return this;
  }

  Scene rest(double seconds) {
    return to(legs.isEmpty() ? 0 : legs.get(legs.size() - 1)[0], seconds);
  }

  Scene noise(double sigmaN) {
    noiseN = sigmaN;
    return this;
  }

  Scene gauge(double perSecond) {
    gaugePerSecond = perSecond;
    return this;
  }

  Scene wild(double share) {
    wildShare = share;
    return this;
  }

  Scene change(UnaryOperator<Reading> how) {
    change = how;
    return this;
  }

  List<Reading> readings() {
    List<Reading> readings = new ArrayList<>();
    double fromN = 0;
    double t = 0;
    double legStart = 0;
    double nextGauge = 0;
    int leg = 0;
    int seq = 65_000;
    long clock = Reading.TIME_VALUES - 2_000_000;
    for (; leg < legs.size(); t += 1 / readingsPerSecond) {
      while (leg < legs.size() && t - legStart >= legs.get(leg)[1]) {
        legStart += legs.get(leg)[1];
        fromN = legs.get(leg)[0];
        leg++;
      }
      if (leg == legs.size()) {
        break;
      }
      double share = (t - legStart) / legs.get(leg)[1];
      double loadN = fromN + share * (legs.get(leg)[0] - fromN);
      boolean hasGauge = t >= nextGauge;
      nextGauge = hasGauge ? t + 1 / gaugePerSecond : nextGauge;
      readings.add(
          change.apply(
              new Reading(
                  seq++ % Reading.SEQ_VALUES,
                  (clock + Math.round(t * 1e6)) % Reading.TIME_VALUES,
                  counts(loadN),
                  hasGauge ? Math.round(REST_STEPS + loadN * MM_PER_N * 1000) : null,
                  flags)));
    }
    return readings;
  }

  private int counts(double loadN) {
    double shown = loadN + noiseN * random.nextGaussian();
    if (random.nextDouble() < wildShare) {
      shown += 300 * (random.nextDouble() - 0.5);
    }
    double counts = REST_COUNTS + shown / 2.5e-5;
    return (int)
        Math.round(Math.max(Reading.LEAST_COUNTS, Math.min(Reading.GREATEST_COUNTS, counts)));
  }

  /** The lines that a head would send. */
  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    readings().forEach(r -> bytes.writeBytes(WireFormat.bytes(r)));
    return bytes.toByteArray();
  }

  /** Plays all of it, or until the walk is over. */
  TestWalk play() {
    return play(new TestWalk(InventedBench.PLAN));
  }

  TestWalk play(TestWalk walk) {
    byte[] bytes = bytes();
    WireReader.fromLineStart(walk).accept(bytes, bytes.length);
    return walk;
  }
}
