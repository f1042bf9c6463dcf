package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SettledCountsTest {
  private static final int A_SECOND = 80;

  private static double[] noisy(double slopePerReading, int readings) {
    Random random = new Random(7);
    return IntStream.range(0, readings)
        .mapToDouble(i -> 48_000 + slopePerReading * i + 40 * random.nextGaussian())
        .toArray();
  }

  private static SettledCounts.Channel load(double[] counts) {
    return SettledCounts.of(counts, new double[0]).load();
  }

  @Test
  void whatOnlyMakesNoiseStandsStill() {
    SettledCounts.Channel load = load(noisy(0, 2 * A_SECOND));
    assertTrue(load.isStill());
    assertEquals(48_000, load.mean(), 4 * 40 / Math.sqrt(2 * A_SECOND));
    assertEquals(40, load.noise(), 8);
  }

  @Test
  void whatCreepsDoesNotStandStillAndItsNoiseIsStillTold() {
    SettledCounts.Channel load = load(noisy(2, 2 * A_SECOND));
    assertFalse(load.isStill());
    assertEquals(40, load.noise(), 8);
  }

  @Test
  void aGaugeThatShowsOneStepOrTheNextStandsStill() {
    double[] steps = IntStream.range(0, 46).mapToDouble(i -> i < 20 ? 1207 : 1208).toArray();
    assertTrue(SettledCounts.of(new double[0], steps).gauge().isStill());
  }

  @Test
  void fewReadingsAreNotCalledStill() {
    assertFalse(load(new double[] {5, 5, 5}).isStill());
    assertFalse(load(new double[0]).isStill());
  }

  @Test
  void onlyTheLastTwoSecondsCountAndUnusableReadingsDoNot() {
    LineHealth health = new LineHealth();
    int n = 5 * A_SECOND;
    for (int i = 0; i < n; i++) {
      int flags = i == n - 1 ? Reading.LOAD_AT_END_STOP : 0;
      int counts = i < 2 * A_SECOND ? 100 : i == n - 1 ? 8_388_607 : 900;
      health.reading(new Reading(i, i * 12_500L, counts, null, flags), i * 12_500L);
    }
    SettledCounts settled = health.settled();
    assertEquals(900, settled.load().mean());
    assertEquals(2 * A_SECOND, settled.load().readings());
    assertTrue(Double.isNaN(settled.gauge().mean()));
    assertEquals(0, settled.load().noise());
  }
}
