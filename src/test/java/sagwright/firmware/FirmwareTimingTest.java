package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stamps, wraps, clock pulses, and which gauge value goes with which load. */
@ExtendWith(BuiltFirmware.class)
class FirmwareTimingTest {

  @Test
  void bothCountersGoRoundWithoutAHole(Simulation simulation) throws Exception {
    HeadStream stream =
        simulation
            .seconds(10)
            .say(0.3, "INIT")
            .with("time-wraps-at", 5)
            .with("seq-from", 65_400)
            .run()
            .stream();
    assertEquals(List.of(), stream.refused());
    assertEquals(stream.readings().size(), stream.withFlags(0));
    assertTrue(stream.missing().stream().allMatch(missing -> missing == 0));
    assertTrue(stream.stepsUs().stream().allMatch(step -> Math.abs(step - 12_500) <= 1));
    assertTrue(stream.readings().stream().anyMatch(reading -> reading.timeUs() > 4_294_900_000L));
    assertTrue(stream.readings().stream().anyMatch(reading -> reading.timeUs() < 100_000));
    assertTrue(stream.readings().stream().anyMatch(reading -> reading.seq() == 65_535));
    assertTrue(stream.readings().stream().anyMatch(reading -> reading.seq() == 0));
  }

  /**
   * A conversion a timer period and one cycle after the last one falls on each cycle around the
   * timer's overflow in turn. A phase left to chance does not find such bugs.
   */
  @ParameterizedTest
  @CsvSource({"524289, -300", "524287, 300"})
  void noStampIsWrongAtAnyPhaseOfTheTimersOverflow(
      long periodCycles, long fromCycles, Simulation simulation) throws Exception {
    HeadStream stream =
        simulation
            .seconds(20)
            .say(0.02, "INIT")
            .with("period", periodCycles)
            .with("sweep", fromCycles)
            .run()
            .stream();
    assertTrue(stream.readings().size() >= 600, () -> stream.readings().size() + " phases");
    assertEquals(stream.readings().size(), stream.withFlags(0));
    long firstUs = stream.readings().get(0).timeUs();
    for (int i = 0; i < stream.readings().size(); i++) {
      double trueUs = firstUs + i * (periodCycles / 16.0);
      assertEquals(trueUs, (double) stream.readings().get(i).timeUs(), 1.6, "reading " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-900, 730, 12_345})
  void theConvertersClockIsNeverHighForLong(double ratePpm, Simulation simulation)
      throws Exception {
    Simulation.Outcome outcome =
        simulation
            .seconds(5)
            .say(0.3, "INIT")
            .with("rate-ppm", ratePpm)
            .with("seed", Math.round(ratePpm))
            .run();
    assertEquals(0, outcome.reported("powerDowns"));
    assertTrue(outcome.reported("clockHighLongestUs") < 1, "60 us put the converter to sleep");
    assertTrue(outcome.reported("clockHighShortestUs") >= 0.2, "and it wants to see the pulse");
  }

  @ParameterizedTest
  @CsvSource({"0, 1, 52, 0.1", "730, 2, 52, 0.1", "-5000, 3, 52, 0.1", "300, 4, 24, 0.2"})
  void noFalseHysteresisIsMade(
      double ratePpm, int seed, int gaugeBits, double mostPercent, Simulation simulation)
      throws Exception {
    HeadStream stream =
        bend(simulation, ratePpm, seed).with("gauge-bits", gaugeBits).run().stream();
    assertEquals(0, stream.hysteresisPercent(), mostPercent);
  }

  /** The measure would see it: a gauge that takes its value earlier than assumed shows at once. */
  @Test
  void aGaugeThatTakesItsValueEarlierMakesTheHysteresisThatFollowsFromIt(Simulation simulation)
      throws Exception {
    HeadStream stream = bend(simulation, 0, 1).with("gauge-age", 17_500).run().stream();
    double expectedPercent = 100 * 2 * 2500 * 0.0175 / 10_000; // twice the way in 17.5 ms
    assertEquals(expectedPercent, stream.hysteresisPercent(), 0.1);
  }

  @Test
  void aDelayThatWasMeasuredIsTakenOffByTheFirmwareThatIsBuiltWithIt(BuiltFirmware.Built built)
      throws Exception {
    BuiltFirmware.make(
        BuiltFirmware.SOURCES,
        "firmware",
        "GAUGE_AGE_US=17500",
        "OUT=" + built.out().resolve("late-gauge"));
    Simulation simulation =
        new Simulation(built.bench(), built.out().resolve("late-gauge/head.elf"));
    HeadStream stream = bend(simulation, 0, 1).with("gauge-age", 17_500).run().stream();
    assertEquals(0, stream.hysteresisPercent(), 0.1);
  }

  private static Simulation bend(Simulation simulation, double ratePpm, int seed) {
    return simulation
        .seconds(11)
        .say(0.3, "INIT")
        .with("bend", "400000,10000")
        .with("rate-ppm", ratePpm)
        .with("seed", seed);
  }

  @Test
  void nothingIsLostAtTheMostThatTheContractAllows(Simulation simulation) throws Exception {
    Simulation.Outcome outcome =
        simulation
            .seconds(5)
            .say(0.02, "INIT")
            .with("period", 16_000_000 / 230)
            .with("noise", 1e6)
            .run();
    assertEquals(List.of(), outcome.stream().refused());
    assertEquals(outcome.stream().readings().size(), outcome.stream().withFlags(0));
    assertTrue(outcome.stream().readings().size() > 1_100);
  }

  @Test
  void memoryIsLeftBetweenVariablesAndStack(Simulation simulation) throws Exception {
    Simulation.Outcome outcome =
        simulation.seconds(5).say(0.3, "INIT").say(1, "*IDN?").say(2, "BAD").run();
    double used = outcome.reported("staticRamBytes") + outcome.reported("stackBytes");
    assertTrue(used < 1_600, () -> used + " of 2048 bytes");
  }
}
