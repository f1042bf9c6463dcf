package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class CalibrationTest {
  private static final Instant MADE = Instant.parse("2026-03-02T09:00:00Z");

  @Test
  void holdsFromTheDayItWasMadeToTheEndOfItsDays() {
    Calibration c = new Calibration(MADE, 365, "KM", null, null, 0.002, 0);
    assertTrue(c.isValidAt(MADE));
    assertTrue(c.isValidAt(Instant.parse("2027-03-02T09:00:00Z")));
    assertFalse(c.isValidAt(Instant.parse("2027-03-02T09:00:01Z")));
    assertFalse(c.isValidAt(MADE.minusSeconds(1)));
    assertFalse(c.isComplete());
  }

  @Test
  void countsAndStepsBecomeNewtonsAndMillimetresReckonedFromAZero() {
    LoadCalibration load = new LoadCalibration(-2.5e-5, 0.1, 0.02, 50);
    assertEquals(25.0, load.newtons(-1_000_000, 0), 1e-12);
    assertEquals(24.0, load.newtons(-1_000_000, -40_000), 1e-12);
    assertEquals(-400_000, load.counts(10));
    GaugeCalibration gauge = new GaugeCalibration(0.001, 0.05, 0.005, 25, 0);
    assertEquals(4.872, gauge.millimetres(5000, 128), 1e-12);
    assertEquals(4872, gauge.steps(4.8724));
  }

  @Test
  void aFactorOfNothingIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new LoadCalibration(0, 0, 0, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new GaugeCalibration(Double.NaN, 0, 0, 1, 0));
  }
}
