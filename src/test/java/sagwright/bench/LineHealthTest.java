package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineHealthTest {
  private static final double NEWTON_PER_COUNT = InventedBench.CALIBRATION.load().newtonPerCount();

  private static LineHealth after(
      double seconds, double rate, DoubleUnaryOperator loadN, double noiseN) {
    LineHealth health = new LineHealth();
    Random random = new Random(42);
    for (int i = 0; i < seconds * rate; i++) {
      double t = i / rate;
      double n = loadN.applyAsDouble(t) + noiseN * random.nextGaussian();
      long steps = Math.round(3 * random.nextGaussian());
      health.reading(
          new Reading(
              i % Reading.SEQ_VALUES,
              Math.round(t * 1e6),
              (int) Math.round(n / NEWTON_PER_COUNT),
              i % 4 == 0 ? steps : null,
              0),
          Math.round(t * 1e6));
    }
    return health;
  }

  private static double sine(double t, double hz) {
    return Math.sin(2 * Math.PI * hz * t);
  }

  @Test
  void tellsRateNoiseAndDrift() {
    HealthReport report =
        after(30, 80, t -> 0.01 * t / 60, 0.004).report(InventedBench.CALIBRATION);
    assertEquals(80, report.readingsPerSecond(), 1e-6);
    assertEquals(20, report.gaugePerSecond(), 1e-6);
    assertEquals(0.004, report.loadNoiseN(), 0.0002);
    assertEquals(0.003, report.gaugeNoiseMm(), 0.0003);
    assertEquals(0.01, report.loadDriftNPerMinute(), 0.001);
    assertEquals(new LineStatistics(2400, 0, 0, 0), report.line());
    assertTrue(report.hum().isEmpty(), "noise alone is no hum");
  }

  @ParameterizedTest
  @CsvSource({
    "80, 50, 30",
    "80, 60, 20",
    "230, 50, 50",
    "230, 60, 60",
    "1000, 50, 50",
    "75, 60, 15"
  })
  void namesTheMainsByWhereItsHumComesIn(double rate, int mainsHz, double shownAtHz) {
    HealthReport report =
        after(20, rate, t -> 0.003 * sine(t, mainsHz), 0.004).report(InventedBench.CALIBRATION);
    MainsHum hum = report.hum().orElseThrow();
    assertEquals(mainsHz, hum.mainsHz());
    assertEquals(shownAtHz, hum.shownAtHz(), 0.1);
    assertEquals(0.003, hum.amplitudeN(), 0.0008);
  }

  @Test
  void theOvertoneOfFiftyIsNotTakenForSixty() {
    HealthReport report =
        after(20, 80, t -> 0.003 * sine(t, 50) + 0.004 * sine(t, 100), 0.002)
            .report(InventedBench.CALIBRATION);
    assertEquals(50, report.hum().orElseThrow().mainsHz());
  }

  @Test
  void whatCannotBeToldIsNotMadeUp() {
    HealthReport none = new LineHealth().report(InventedBench.CALIBRATION);
    assertTrue(Double.isNaN(none.readingsPerSecond()));
    assertTrue(Double.isNaN(none.loadNoiseN()));
    assertEquals(0, none.spectrum().amplitudeN().length);
    assertTrue(
        after(20, 50, t -> 0.01 * sine(t, 50), 0.004)
            .report(InventedBench.CALIBRATION)
            .hum()
            .isEmpty(),
        "at 50 readings a second hum of 50 Hz stands still");
  }

  @Test
  void countsWhatWasRefusedAndMissed() {
    LineHealth health = after(2, 80, t -> 0, 0.001);
    health.refused(Refusal.CHECK_SUM, "x");
    health.refused(Refusal.NOT_A_READING, "y");
    health.gap(4);
    HealthReport report = health.report(InventedBench.CALIBRATION);
    assertEquals(new LineStatistics(160, 2, 1, 4), report.line());
    assertEquals(1, report.checkSumFailures());
  }

  @Test
  void aSpectrumIsTakenOverReadingsThatFollowEachOther() {
    LineHealth health = after(10, 80, t -> 0, 0.001);
    for (int i = 0; i < 40; i++) {
      health.reading(new Reading(1_000 + i, 0, 5, null, 0), 12_000_000 + i * 12_500L);
    }
    assertEquals(0, health.report(InventedBench.CALIBRATION).spectrum().amplitudeN().length);
    assertFalse(Double.isNaN(health.report(InventedBench.CALIBRATION).loadNoiseN()));
  }
}
