package sagwright.bench.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import sagwright.bench.Ending;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.bench.InventedBench;
import sagwright.bench.RecordedRun;
import sagwright.bench.Waiting;
import sagwright.run.ReadingUncertainty;
import sagwright.run.StiffnessFinder;
import sagwright.run.StiffnessFit;

/**
 * What the practice bench shows is the truth that it was given, noise, toe, creep and hand in it.
 */
@Timeout(120)
class PracticeTruthTest {
  private static final double MM_PER_N = 0.2437;
  private static final int RUNS = 40;

  @Test
  void stiffnessFoundOnThePracticeBenchIsTheOneThatWasLaidThere() throws Exception {
    PracticeHead head =
        new PracticeHead(InventedBench.CALIBRATION, PracticeOptions.BELIEVABLE, new JumpingClock());
    double sum = 0;
    int inside = 0;
    try (HeadSession session = HeadSession.lasting(head, HeadTiming.ORDINARY, head)) {
      for (int i = 0; i < RUNS; i++) {
        head.lay(MM_PER_N);
        RecordedRun run =
            Waiting.on(session.begin(InventedBench.PLAN, raw -> {}, Duration.ofMinutes(5)));
        assertEquals(Ending.LOAD_OFF, run.ending());
        StiffnessFit fit =
            StiffnessFinder.find(run.samples(), new ReadingUncertainty(0.006, 0.0009));
        double off = fit.stiffnessNPerMm() * MM_PER_N - 1;
        sum += off;
        inside += Math.abs(off) < 3 * fit.lineUncertaintyNPerMm() * MM_PER_N + 0.0015 ? 1 : 0;
      }
    }
    assertEquals(0, sum / RUNS, 0.0015, "on the mean, creep in it");
    assertTrue(inside >= RUNS - 1, inside + " of " + RUNS);
  }
}
