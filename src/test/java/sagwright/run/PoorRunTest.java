package sagwright.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Runs that can give no answer are refused with one line that says why. */
class PoorRunTest {

  @Test
  void shaftThatWasNeverTouched() {
    refused(DrawnRun.along(0, 0, 10), "no contact");
  }

  @Test
  void loadThatIsAllZero() {
    DrawnRun run = DrawnRun.ordinary();
    Arrays.fill(run.loadN, 0);
    refused(run, "no contact");
  }

  @Test
  void gaugeMovedByHandWithNoLoadOn() {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 0; i < run.size(); i++) {
      run.loadN[i] = 0.02 * run.random.nextGaussian();
    }
    refused(run, "no contact");
  }

  @Test
  void gaugeThatDoesNotMove() {
    refused(DrawnRun.bending(f -> 1.234, 0, 0, 2, 20, 8, 20, 2, 0, 4), "gauge does not move");
    DrawnRun run = DrawnRun.ordinary();
    Arrays.fill(run.deflectionMm, 1.2);
    refused(run, "gauge does not move");
  }

  @Test
  void gaugeTheWrongWayRound() {
    refused(DrawnRun.bending(f -> -f / 4, 0, 0, 2, 20, 8, 20, 2, 0, 4), "deflection falls");
  }

  @Test
  void loadTheWrongWayRound() {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 0; i < run.size(); i++) {
      run.loadN[i] = -run.loadN[i];
    }
    refused(run, "no loading branch");
  }

  @Test
  void unloadingAlone() {
    refused(DrawnRun.along(20, 20, 2, 0, 8, 0, 2), "no loading branch");
  }

  @Test
  void loadThatJumps() {
    refused(DrawnRun.ofLoads(0, 0, 0, 0, 0, 20, 20, 20, 20, 20, 0, 0, 0, 0), "no loading branch");
  }

  @Test
  void gaugeThatTellsNothingOfTheLoad() {
    DrawnRun run = DrawnRun.ordinary();
    double walk = 0;
    for (int i = 0; i < run.size(); i++) {
      walk += 0.05 * run.random.nextGaussian();
      run.deflectionMm[i] = walk;
    }
    refused(run, "");
  }

  @Test
  void readingsThatScatterMoreThanTheyMove() {
    refused(DrawnRun.along(0, 0, 2, 0.1, 8, 0.1, 1, 0, 4), "");
  }

  @Test
  void tooFewSamples() {
    for (int n = 0; n <= 7; n++) {
      double[] loads = new double[n];
      Arrays.setAll(loads, i -> 3 * i);
      refused(DrawnRun.ofLoads(loads), "too few samples: " + n);
    }
  }

  @Test
  void tooFewSamplesOnTheWayUp() {
    refused(DrawnRun.ofLoads(0, 0, 0, 7, 14, 20, 20, 20, 14, 7, 0, 0), "too few samples");
  }

  private static void refused(DrawnRun run, String reason) {
    PoorRunException e = assertThrows(PoorRunException.class, run::fit);
    assertTrue(e.getMessage().contains(reason), e.getMessage());
    assertFalse(e.getMessage().contains("\n") || e.getMessage().isBlank());
  }
}
