package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TestWalkTest {
  private static Scene ordinary(double rate, long seed) {
    return new Scene(rate, seed).rest(1).to(20.5, 4).rest(0.5).to(0, 3).rest(2);
  }

  @ParameterizedTest
  @CsvSource({
    "10, 1000000000, 0",
    "10, 8, 0.03",
    "80, 80, 0.004",
    "80, 23, 0.05",
    "230, 10, 0.004",
    "1000, 1000, 0.02",
    "1000, 3, 0.1"
  })
  void endsByItselfWhenTheLoadIsBackOff(double rate, double gauge, double noise) {
    for (long seed = 1; seed <= 10; seed++) {
      TestWalk walk = ordinary(rate, seed).gauge(gauge).noise(noise).play();
      assertTrue(walk.isOver(), "seed " + seed + " at " + walk.snapshot());
      RecordedRun run = walk.run();
      assertEquals(Ending.LOAD_OFF, run.ending());
      assertTrue(run.cameOffPeak());
      assertEquals(20.5, run.greatestLoadN(), 0.1 + 4 * noise);
      assertEquals(Scene.REST_COUNTS, run.zero().loadCounts(), 40 + 40_000 * noise);
      assertEquals(Scene.REST_STEPS, run.zero().gaugeSteps(), 12);
      double lastS = run.samples().timeS()[run.samples().size() - 1];
      assertTrue(lastS > 8.2 && lastS < 10.2, "ended " + lastS + " s after its start");
    }
  }

  @Test
  void saysWhatToDoNextInItsOrder() {
    TestWalk walk = new TestWalk(InventedBench.PLAN);
    List<Instruction> said = new ArrayList<>();
    WireReader reader = WireReader.fromLineStart(walk);
    for (Reading r : ordinary(80, 3).readings()) {
      byte[] line = WireFormat.bytes(r);
      reader.accept(line, line.length);
      Instruction now = walk.snapshot().instruction();
      if (said.isEmpty() || said.get(said.size() - 1) != now) {
        said.add(now);
      }
    }
    assertEquals(
        List.of(
            Instruction.HOLD_STILL, Instruction.LOAD_SLOWLY, Instruction.LET_OFF, Instruction.DONE),
        said);
  }

  @Test
  void samplesAreReckonedFromTheZeroAndTimedByTheHead() {
    RecordedRun run = ordinary(80, 5).noise(0).play().run();
    double[] load = run.samples().loadN();
    double[] deflection = run.samples().deflectionMm();
    for (int i = 0; i < load.length; i++) {
      assertEquals(load[i] * 0.25, deflection[i], 0.0008);
    }
    assertEquals(0, run.samples().timeS()[0]);
    assertEquals(0.0125, run.samples().timeS()[1], 1e-6);
    assertEquals(load.length, run.line().readings(), "every reading carried both");
    assertEquals(new LineStatistics(load.length, 0, 0, 0), run.line());
  }

  @Test
  void aSlowGaugeGivesFewerSamplesAndNoneIsMadeUp() {
    List<Reading> sent = ordinary(230, 5).gauge(8).readings();
    RecordedRun run = ordinary(230, 5).gauge(8).play().run();
    long both =
        sent.stream().limit(run.line().readings()).filter(r -> r.gaugeSteps() != null).count();
    assertEquals(both, run.samples().size());
    assertTrue(run.line().readings() > 20 * both);
  }

  @Test
  void anUnevenHandDoesNotEndTheRun() {
    RecordedRun run =
        new Scene(80, 8)
            .rest(1)
            .to(6, 1)
            .to(5.2, 0.3)
            .rest(1.5)
            .to(13, 2)
            .to(10.8, 0.4)
            .rest(1)
            .to(12, 0.2)
            .to(20.4, 3)
            .to(19.9, 1)
            .to(20.6, 1)
            .to(8, 2)
            .rest(1)
            .to(0, 2)
            .rest(2)
            .play()
            .run();
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(20.6, run.greatestLoadN(), 0.05);
  }

  @Test
  void aTouchIsNoLoading() {
    TestWalk walk = new Scene(80, 9).rest(1).to(0.6, 0.3).to(0, 0.3).rest(3).play();
    assertFalse(walk.isOver());
    assertEquals(TestPhase.AT_REST, walk.snapshot().phase());
    walk =
        new Scene(80, 9)
            .rest(1)
            .to(0.6, 0.3)
            .to(0, 0.3)
            .rest(2)
            .to(20.2, 3)
            .to(0, 3)
            .rest(1)
            .play();
    assertEquals(Ending.LOAD_OFF, walk.run().ending());
  }

  @Test
  void aLoadThatIsFarBelowTheTargetStillEndsTheRun() {
    RecordedRun run = new Scene(80, 9).rest(1).to(5, 3).to(0, 3).rest(2).play().run();
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(5, run.greatestLoadN(), 0.05);
  }

  @Test
  void aCellThatDoesNotReturnToItsZeroStillEndsTheRun() {
    assertEquals(
        Ending.LOAD_OFF,
        new Scene(80, 2).rest(1).to(20, 4).to(1.9, 3).rest(2).play().run().ending());
  }

  @Test
  void wildReadingsDoNotLeadItAstray() {
    for (long seed = 1; seed <= 20; seed++) {
      TestWalk walk = ordinary(80, seed).wild(0.01).play();
      assertTrue(walk.isOver(), "seed " + seed);
      assertEquals(20.5, walk.run().greatestLoadN(), 0.4, "seed " + seed);
      assertTrue(walk.run().line().readings() > 640, "seed " + seed + " ended early");
    }
  }

  @Test
  void aLoadThatIsOnFromTheStartIsWaitedForAndLeftOut() {
    TestWalk walk =
        new Scene(80, 4).to(12, 0.5).to(15, 1).to(0, 1).rest(1).to(20.5, 3).to(0, 3).rest(1).play();
    RecordedRun run = walk.run();
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(Scene.REST_COUNTS, run.zero().loadCounts(), 100);
    for (int i = 0; i < 50; i++) {
      assertEquals(0, run.samples().loadN()[i], 0.5, "the run starts at its rest");
    }
    assertTrue(run.line().readings() > run.samples().size() + 180, "the lines before are counted");
  }

  @Test
  void whatWasTakenOffBeforeLoadingMakesANewZero() {
    RecordedRun run =
        new Scene(80, 4)
            .to(3, 0.01)
            .rest(1)
            .to(0, 0.2)
            .rest(1)
            .to(20.5, 3)
            .to(0, 3)
            .rest(1)
            .play()
            .run();
    assertEquals(Scene.REST_COUNTS, run.zero().loadCounts(), 100);
    assertEquals(20.5, run.greatestLoadN(), 0.2);
  }

  @Test
  void negativeFactorsLoadTheSameWay() {
    Calibration turned =
        new Calibration(
            InventedBench.CALIBRATION.made(),
            365,
            null,
            new LoadCalibration(-2.5e-5, 0.1, 0.02, 50),
            new GaugeCalibration(-0.001, 0.05, 0.005, 25, 0),
            0,
            0);
    TestWalk walk = new TestWalk(new TestPlan(turned, InventedBench.PLAN.limits()));
    ordinary(80, 6)
        .change(
            r -> new Reading(r.seq(), r.timeMicros(), -r.loadCounts(), -r.gaugeSteps(), r.flags()))
        .play(walk);
    assertEquals(Ending.LOAD_OFF, walk.run().ending());
    assertEquals(20.5, walk.run().greatestLoadN(), 0.05);
  }

  @Test
  void aLoadReadTheWrongWayRoundIsSaid() {
    TestWalk walk =
        ordinary(80, 6)
            .change(
                r ->
                    new Reading(
                        r.seq(), r.timeMicros(), -r.loadCounts(), r.gaugeSteps(), r.flags()))
            .play();
    walk.end(Ending.TIMED_OUT);
    assertTrue(walk.run().warnings().contains(BenchWarning.LOAD_BACKWARD));
  }

  @Test
  void warnsBeforeTheSafeLoadIsPassedAndWhenItIs() {
    TestWalk walk = new TestWalk(new TestPlan(InventedBench.CALIBRATION, new LoadLimits(20, 24)));
    WireReader reader = WireReader.fromLineStart(walk);
    double nearAt = Double.NaN;
    double overAt = Double.NaN;
    for (Reading r : new Scene(80, 1).rest(1).to(30, 6).to(0, 3).rest(1).readings()) {
      byte[] line = WireFormat.bytes(r);
      reader.accept(line, line.length);
      TestSnapshot now = walk.snapshot();
      if (Double.isNaN(nearAt) && now.warnings().contains(BenchWarning.NEAR_SAFE_LOAD)) {
        nearAt = now.loadN();
      }
      if (Double.isNaN(overAt) && now.warnings().contains(BenchWarning.OVER_SAFE_LOAD)) {
        overAt = now.loadN();
      }
    }
    assertEquals(0.85 * 24, nearAt, 0.3);
    assertEquals(24, overAt, 0.3);
    assertEquals(
        Set.of(BenchWarning.NEAR_SAFE_LOAD, BenchWarning.OVER_SAFE_LOAD), walk.run().warnings());
    assertEquals(Set.of(), walk.snapshot().warnings(), "they hold only while they are true");
  }

  @Test
  void flaggedReadingsAreCountedAndShownButNotUsed() {
    TestWalk walk =
        ordinary(80, 7)
            .change(
                r -> {
                  int flag =
                      r.seq() % 10 == 3
                          ? 0x01
                          : r.seq() % 10 == 5 ? 0x02 : r.seq() % 10 == 7 ? 0x04 : 0;
                  Integer load =
                      flag == 0x01
                          ? Integer.valueOf(Reading.GREATEST_COUNTS)
                          : flag == 0x04 ? null : r.loadCounts();
                  return new Reading(r.seq(), r.timeMicros(), load, r.gaugeSteps(), flag);
                })
            .play();
    RecordedRun run = walk.run();
    assertEquals(20.5, run.greatestLoadN(), 0.05);
    assertEquals(0.7 * run.line().readings(), run.samples().size(), 3);
    assertEquals(
        Set.of(BenchWarning.LOAD_AT_END_STOP, BenchWarning.LOAD_MISSING, BenchWarning.GAUGE_SILENT),
        run.warnings());
  }

  @Test
  void aBenchWithoutAGaugeIsSaidAndGivesNoSamples() {
    RecordedRun run =
        ordinary(80, 7)
            .change(r -> new Reading(r.seq(), r.timeMicros(), r.loadCounts(), null, 0))
            .play()
            .run();
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(0, run.samples().size());
    assertEquals(Set.of(BenchWarning.GAUGE_SILENT), run.warnings());
  }

  @Test
  void aGaugeThatWakesAfterTheRestIsReckonedFromItsFirstReading() {
    RecordedRun run =
        ordinary(80, 7)
            .change(
                r ->
                    Math.floorMod(r.seq() - 65_000, 65_536) < 100
                        ? new Reading(r.seq(), r.timeMicros(), r.loadCounts(), null, 0)
                        : r)
            .play()
            .run();
    assertEquals(0, run.samples().deflectionMm()[0]);
    assertTrue(Double.isFinite(run.samples().deflectionMm()[300]));
  }

  @Test
  void aHeadThatRestartsEndsTheRunAndKeepsWhatWasRead() {
    List<Reading> loading = new Scene(80, 3).rest(1).to(12, 3).readings();
    TestWalk walk = new TestWalk(InventedBench.PLAN);
    WireReader reader = WireReader.fromLineStart(walk);
    loading.forEach(r -> reader.accept(WireFormat.bytes(r), WireFormat.bytes(r).length));
    byte[] anew = WireFormat.bytes(new Reading(0, 0, 500_000, 100L, 0));
    reader.accept(anew, anew.length);
    RecordedRun run = walk.run();
    assertEquals(Ending.HEAD_RESTARTED, run.ending());
    assertEquals(
        loading.size(), run.samples().size(), "the reading after the restart is not the run's");
    assertFalse(run.cameOffPeak());
    assertFalse(run.allowsAnswer());
  }

  @ParameterizedTest
  @CsvSource({"12, false", "20.5, false", "17, true", "9, true", "0.4, true"})
  void aLostLineGivesAnAnswerOnlyWhereTheLoadHadComeBackOffItsPeak(double lastN, boolean answer) {
    Scene scene = new Scene(80, 3).rest(1);
    scene = lastN == 12 ? scene.to(12, 3) : scene.to(20.5, 4).to(lastN, 2);
    TestWalk walk = scene.play();
    assertFalse(walk.isOver());
    walk.end(Ending.LINE_LOST);
    assertEquals(answer, walk.run().cameOffPeak());
    assertEquals(answer, walk.run().allowsAnswer());
  }

  @Test
  void aHeadThatRestartsWhileItIsOpenedBeginsTheTestAnew() {
    TestWalk walk = new TestWalk(InventedBench.PLAN);
    WireReader reader = WireReader.fromLineStart(walk);
    for (int i = 0; i < 8; i++) {
      byte[] old = WireFormat.bytes(new Reading(900 + i, 5_000_000 + 12_500L * i, 400_000, 5L, 0));
      reader.accept(old, old.length);
    }
    int seq = 0;
    for (Reading r : ordinary(80, 3).readings()) {
      byte[] line =
          WireFormat.bytes(new Reading(seq, 12_500L * seq++, r.loadCounts(), r.gaugeSteps(), 0));
      reader.accept(line, line.length);
    }
    assertEquals(Ending.LOAD_OFF, walk.run().ending());
    assertEquals(Scene.REST_COUNTS, walk.run().zero().loadCounts(), 100);
    assertEquals(0, walk.run().samples().loadN()[0], 0.05);
  }

  @Test
  void gapsAndRefusedLinesAreTheRunsOwnFromItsFirstReadingOn() {
    TestWalk walk = new TestWalk(InventedBench.PLAN);
    walk.gap(7);
    walk.refused(Refusal.CHECK_SUM, "torn");
    WireReader reader = WireReader.fromLineStart(walk);
    for (Reading r : ordinary(80, 3).readings()) {
      byte[] line = WireFormat.bytes(r);
      if (r.seq() % 100 == 40 || r.seq() % 100 == 41) {
        continue;
      }
      line[12] ^= (byte) (r.seq() % 100 == 77 ? 1 : 0);
      reader.accept(line, line.length);
    }
    LineStatistics line = walk.run().line();
    assertTrue(line.gaps() >= 12 && line.gaps() <= 16, line.toString());
    assertEquals(line.missing(), 2 * (line.gaps() - (line.refused() - 1)) + line.refused() - 1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ENDED_BY_HAND", "BROKEN_OFF", "TIMED_OUT", "NOT_KEPT"})
  void whoeverEndsItKeepsWhatWasReadAndLaterEndingsChangeNothing(Ending how) {
    TestWalk walk = new Scene(80, 3).rest(1).to(12, 3).play();
    assertThrows(IllegalStateException.class, walk::run);
    walk.end(how);
    walk.end(Ending.LINE_LOST);
    walk.reading(new Reading(1, 1, 1, 1L, 0), 9_000_000);
    assertEquals(how, walk.run().ending());
    assertEquals(320, walk.run().samples().size());
    assertEquals(how == Ending.ENDED_BY_HAND, walk.run().allowsAnswer());
    assertEquals(Instruction.DONE, walk.snapshot().instruction());
  }

  @Test
  void aSnapshotNeverChangesAfterItWasTaken() {
    TestWalk walk = new TestWalk(InventedBench.PLAN);
    WireReader reader = WireReader.fromLineStart(walk);
    List<Reading> all = ordinary(1000, 3).readings();
    TestSnapshot early = null;
    double[] earlyLoads = null;
    for (int i = 0; i < all.size(); i++) {
      byte[] line = WireFormat.bytes(all.get(i));
      reader.accept(line, line.length);
      if (i == 3_000) {
        early = walk.snapshot();
        earlyLoads = early.trace().samples().loadN();
      }
    }
    assertEquals(3_001, early.trace().size());
    assertArrayEquals(earlyLoads, early.trace().samples().loadN());
    assertEquals(3.0, early.elapsedS(), 1e-9);
  }

  @Test
  void keptLinesGiveTheSameRunAgain() {
    byte[] raw = ordinary(230, 11).gauge(10).wild(0.005).bytes();
    TestWalk walk = new TestWalk(InventedBench.PLAN);
    WireReader.fromLineStart(walk).accept(raw, raw.length);
    RecordedRun again = TestReplay.of(raw, InventedBench.PLAN, Ending.CUT_OFF);
    assertEquals(Ending.LOAD_OFF, again.ending());
    assertArrayEquals(walk.run().samples().loadN(), again.samples().loadN());
    assertArrayEquals(walk.run().samples().timeS(), again.samples().timeS());
    assertEquals(walk.run().line(), again.line());
    RecordedRun half =
        TestReplay.of(
            java.util.Arrays.copyOf(raw, raw.length / 3), InventedBench.PLAN, Ending.CUT_OFF);
    assertEquals(Ending.CUT_OFF, half.ending());
    assertTrue(half.samples().size() > 20);
  }
}
