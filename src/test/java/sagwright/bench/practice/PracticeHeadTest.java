package sagwright.bench.practice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.bench.BenchWarning;
import sagwright.bench.Ending;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.bench.InventedBench;
import sagwright.bench.LineStatistics;
import sagwright.bench.LinkState;
import sagwright.bench.RecordedRun;
import sagwright.bench.SettledCounts;
import sagwright.bench.TestPhase;
import sagwright.bench.Waiting;
import sagwright.run.Samples;

@Timeout(120)
class PracticeHeadTest {
  private static final double MM_PER_N = 0.2437;
  private static final Duration LONG = Duration.ofMinutes(5);

  private static PracticeHead head(long seed) {
    return new PracticeHead(
        InventedBench.CALIBRATION, PracticeOptions.BELIEVABLE.withSeed(seed), new JumpingClock());
  }

  private static RecordedRun test(PracticeHead head) throws Exception {
    try (HeadSession session = HeadSession.once(head, HeadTiming.ORDINARY, head)) {
      return Waiting.on(session.begin(InventedBench.PLAN, raw -> {}, LONG));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aWholeTestIsLedByTheHandThatDoesAsItIsTold(long seed) throws Exception {
    PracticeHead head = head(seed);
    head.lay(MM_PER_N);
    RecordedRun run = test(head);
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertTrue(run.greatestLoadN() > 19.5 && run.greatestLoadN() < 25, "" + run.greatestLoadN());
    assertEquals(new LineStatistics(run.line().readings(), 0, 0, 0), run.line());
    assertTrue(run.warnings().isEmpty(), run.warnings().toString());
    assertEquals(MM_PER_N, slopeWhileLoading(run.samples()), 0.005 * MM_PER_N);
  }

  /** Plain least squares of deflection on load between 5 N and 18 N before the peak. */
  private static double slopeWhileLoading(Samples samples) {
    SimpleRegression line = new SimpleRegression();
    int peak = 0;
    for (int i = 0; i < samples.size(); i++) {
      peak = samples.loadN()[i] > samples.loadN()[peak] ? i : peak;
    }
    for (int i = 0; i < peak; i++) {
      if (samples.loadN()[i] > 5 && samples.loadN()[i] < 18) {
        line.addData(samples.loadN()[i], samples.deflectionMm()[i]);
      }
    }
    return line.getSlope();
  }

  @Test
  void theSameSeedGivesTheSameNoiseAndAnotherSeedAnother() throws Exception {
    assertArrayEquals(rawAtRest(5), rawAtRest(5));
    assertFalse(java.util.Arrays.equals(rawAtRest(5), rawAtRest(6)));
  }

  private static byte[] rawAtRest(long seed) throws Exception {
    ByteArrayOutputStream raw = new ByteArrayOutputStream();
    try (sagwright.bench.ByteLine line = head(seed).open()) {
      line.write("INIT\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
      byte[] buffer = new byte[64];
      while (raw.size() < 5_000) {
        raw.write(buffer, 0, line.read(buffer, Duration.ofMillis(100)));
      }
    }
    return java.util.Arrays.copyOf(raw.toByteArray(), 5_000);
  }

  @Test
  void anEmptyBenchShowsNoLoadHoweverLongOneWaits() throws Exception {
    PracticeHead head = head(3);
    head.lay(MM_PER_N);
    head.takeOff();
    try (HeadSession session = HeadSession.lasting(head, HeadTiming.ORDINARY, head)) {
      session.begin(InventedBench.PLAN, raw -> {}, LONG);
      Waiting.until(
          () -> session.snapshot().test() != null && session.snapshot().test().elapsedS() > 60,
          () -> session.snapshot().toString());
      assertEquals(TestPhase.AT_REST, session.snapshot().test().phase());
    }
  }

  @Test
  void hungMassesAndABlockUnderTheStemShowAtOnceAndBendNothing() throws Exception {
    PracticeHead head = head(4);
    head.lay(MM_PER_N);
    head.hang(9.81);
    head.lift(10);
    try (HeadSession session = HeadSession.lasting(head, HeadTiming.ORDINARY, head)) {
      SettledCounts hung = settled(session, Double.POSITIVE_INFINITY);
      head.hang(0);
      head.lift(0);
      SettledCounts empty = settled(session, hung.load().mean() - 1000);
      double countsAway = hung.load().mean() - empty.load().mean();
      double stepsAway = hung.gauge().mean() - empty.gauge().mean();
      assertEquals(9.81, InventedBench.CALIBRATION.load().newtonPerCount() * countsAway, 0.02);
      assertEquals(10, InventedBench.CALIBRATION.gauge().mmPerStep() * stepsAway, 0.01);
    }
  }

  /** What stands still, all of one moment, with the load below so many counts. */
  private static SettledCounts settled(HeadSession session, double belowCounts) throws Exception {
    AtomicReference<SettledCounts> still = new AtomicReference<>();
    Waiting.until(
        () -> {
          SettledCounts now = session.settled();
          still.set(now);
          return now.load().isStill() && now.gauge().isStill() && now.load().mean() < belowCounts;
        },
        () -> session.settled().toString());
    return still.get();
  }

  @Test
  void aPulledPlugEndsTheRunAndTheNextTestRunsAfterItIsBackIn() throws Exception {
    PracticeHead head =
        new PracticeHead(
            InventedBench.CALIBRATION, PracticeOptions.BELIEVABLE, PracticeClock.faster(20));
    head.lay(MM_PER_N);
    try (HeadSession session = HeadSession.lasting(head, InventedBench.QUICK, head)) {
      var first = session.begin(InventedBench.PLAN, raw -> {}, LONG);
      Waiting.until(
          () -> session.snapshot().test() != null && session.snapshot().test().greatestLoadN() > 4,
          () -> session.snapshot().toString());
      head.pullPlug();
      RecordedRun cut = Waiting.on(first);
      assertEquals(Ending.LINE_LOST, cut.ending());
      assertTrue(cut.samples().size() > 20);
      Waiting.until(
          () -> session.snapshot().link() == LinkState.NOT_OPENED,
          () -> session.snapshot().toString());
      assertTrue(session.snapshot().linkInWords().contains("put it back in"));
      head.putPlugBack();
      RecordedRun whole = Waiting.on(session.begin(InventedBench.PLAN, raw -> {}, LONG));
      assertEquals(Ending.LOAD_OFF, whole.ending());
      assertEquals(0, whole.line().gaps());
    }
  }

  @Test
  void breakingOffLetsTheHandOff() throws Exception {
    PracticeHead head =
        new PracticeHead(
            InventedBench.CALIBRATION, PracticeOptions.BELIEVABLE, PracticeClock.faster(20));
    head.lay(MM_PER_N);
    try (HeadSession session = HeadSession.lasting(head, HeadTiming.ORDINARY, head)) {
      var broken = session.begin(InventedBench.PLAN, raw -> {}, LONG);
      Waiting.until(
          () -> session.snapshot().test() != null && session.snapshot().test().greatestLoadN() > 4,
          () -> session.snapshot().toString());
      session.end(Ending.BROKEN_OFF);
      assertEquals(Ending.BROKEN_OFF, Waiting.on(broken).ending());
      RecordedRun next = Waiting.on(session.begin(InventedBench.PLAN, raw -> {}, LONG));
      assertEquals(Ending.LOAD_OFF, next.ending());
      assertFalse(next.warnings().contains(BenchWarning.OVER_SAFE_LOAD));
    }
  }
}
