package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the head makes of good parts and of bad ones. */
@ExtendWith(BuiltFirmware.class)
class FirmwareFaultsTest {
  private static final double PERIOD_US = 12_500;

  @Test
  void aCleanBendTestArrivesWholeAndEachLoadIsThatOfItsOwnMoment(Simulation simulation)
      throws Exception {
    Simulation.Outcome outcome =
        simulation.seconds(11).say(0.3, "INIT").with("bend", "400000,10000").run();
    HeadStream stream = outcome.stream();
    assertEquals(List.of(), stream.refused());
    assertEquals(stream.readings().size(), stream.withFlags(0));
    assertTrue(stream.readings().size() > 840, () -> stream.readings().size() + " readings");
    assertTrue(stream.missing().stream().allMatch(missing -> missing == 0));
    double startedS = outcome.reported("clockStartedUs") * 1e-6;
    for (HeadLine reading : stream.readings()) {
      double timeS = startedS + reading.timeUs() * 1e-6;
      if (Math.abs(timeS - 3) < 1.9) { // on the loading branch, clear of its corners
        assertEquals(1e5 * (timeS - 1), reading.loadCounts().orElseThrow(), 1);
        reading.gaugeSteps().ifPresent(um -> assertEquals(2500 * (timeS - 1), um, 2500 * 0.0064));
      }
    }
    assertTrue(stream.withGauge() > 20 * 10, () -> stream.withGauge() + " gauge values");
    assertEquals(0, outcome.reported("conversionsUnread"));
    assertEquals(0, outcome.reported("wrongPulseCounts"));
  }

  @Test
  void theSameSeedGivesTheSameBytes(BuiltFirmware.Built built) throws Exception {
    assertEquals(noisy(built, 3).text(), noisy(built, 3).text());
    assertNotEquals(noisy(built, 3).text(), noisy(built, 4).text());
  }

  private static Simulation.Outcome noisy(BuiltFirmware.Built built, int seed) throws Exception {
    return new Simulation(built.bench(), built.head())
        .seconds(3)
        .say(0.3, "INIT")
        .with("noise", 40)
        .with("gauge-noise", 1)
        .with("seed", seed)
        .run();
  }

  @ParameterizedTest
  @CsvSource({
    "end-stop-high, 52, 1",
    "end-stop-low, 52, 1",
    "converter-missing, 52, 4",
    "converter-short, 52, 4",
    "gauge-silent, 52, 2",
    "gauge-short, 52, 2",
    "gauge-long, 52, 2",
    "gauge-inch, 52, 2",
    "gauge-silent, 24, 2",
    "gauge-short, 24, 2",
    "gauge-inch, 24, 2"
  })
  void aBadPartIsFlaggedOnEachLine(String fault, int gaugeBits, int flags, Simulation simulation)
      throws Exception {
    HeadStream stream =
        simulation
            .seconds(3)
            .say(0.3, "INIT")
            .fault(fault)
            .with("gauge-bits", gaugeBits)
            .run()
            .stream();
    assertEquals(List.of(), stream.refused());
    assertTrue(stream.readings().size() > 200, () -> stream.readings().size() + " readings");
    assertEquals(stream.readings().size(), stream.withFlags(flags));
    assertTrue(stream.stepsUs().stream().allMatch(step -> Math.abs(step - PERIOD_US) <= 1));
    boolean loadIsSent = flags != HeadLine.CONVERTER_SILENT;
    assertTrue(stream.readings().stream().allMatch(r -> r.loadCounts().isPresent() == loadIsSent));
    assertEquals(flags == HeadLine.GAUGE_SILENT, stream.withGauge() == 0);
  }

  @Test
  void aGaugeThatDiesIsFlaggedAfterHalfASecond(Simulation simulation) throws Exception {
    HeadStream stream =
        simulation.seconds(5).say(0.3, "INIT").fault("gauge-silent:2").run().stream();
    for (HeadLine reading : stream.readings()) {
      if (reading.timeUs() < 2_400_000) {
        assertEquals(0, reading.flags());
      } else if (reading.timeUs() > 2_600_000) {
        assertEquals(HeadLine.GAUGE_SILENT, reading.flags());
      }
    }
    assertTrue(stream.withFlags(HeadLine.GAUGE_SILENT) > 150);
  }

  @Test
  void aConverterThatComesBackIsUsedAgainAndTimeNeverGoesBack(Simulation simulation)
      throws Exception {
    HeadStream stream =
        simulation.seconds(5).say(0.3, "INIT").fault("converter-missing:2:3").run().stream();
    assertTrue(stream.withFlags(HeadLine.CONVERTER_SILENT) > 60);
    assertEquals(0, stream.readings().get(stream.readings().size() - 1).flags());
    assertTrue(stream.missing().stream().allMatch(missing -> missing == 0));
    assertTrue(stream.stepsUs().stream().allMatch(step -> step > 0 && step < 100_000));
  }

  /**
   * Without a check sum in its frame only what cannot be true is caught: no wild value goes out.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void aFlippedBitInAFrameNeverMakesAWildValue(int seed, Simulation simulation) throws Exception {
    HeadStream stream =
        simulation
            .seconds(5)
            .say(0.3, "INIT")
            .fault("gauge-flip")
            .with("seed", seed)
            .run()
            .stream();
    assertTrue(stream.withGauge() > 50);
    for (HeadLine reading : stream.readings()) {
      double trueUm = 2500 * Math.max(0, reading.timeUs() * 1e-6 - 1);
      reading.gaugeSteps().ifPresent(um -> assertEquals(trueUm, um, 2600));
    }
  }

  @Test
  void bothKindsOfFrameGiveTheSameLengths(Simulation simulation) throws Exception {
    HeadStream stream =
        simulation
            .seconds(11)
            .say(0.3, "INIT")
            .with("gauge-bits", 24)
            .with("bend", "400000,-10000")
            .run()
            .stream();
    assertEquals(stream.readings().size(), stream.withFlags(0));
    assertTrue(stream.withGauge() > 5 * 10, () -> stream.withGauge() + " gauge values");
    int least =
        stream.readings().stream().mapToInt(r -> r.gaugeSteps().orElse(0)).min().orElseThrow();
    assertEquals(-10_000, least, 250);
  }

  @Test
  void aGaugeSwitchedToFewerPlacesKeepsItsUnit(Simulation simulation) throws Exception {
    HeadStream stream =
        simulation.seconds(6).say(0.3, "INIT").with("gauge-places", 2).run().stream();
    int most =
        stream.readings().stream().mapToInt(r -> r.gaugeSteps().orElse(0)).max().orElseThrow();
    assertEquals(10_000, most, 20);
  }

  @Test
  void aLineTooSlowLosesWholeReadingsAndTheGapAgreesWithTheFlag(BuiltFirmware.Built built)
      throws Exception {
    BuiltFirmware.make(
        BuiltFirmware.SOURCES, "firmware", "BAUD=9600", "OUT=" + built.out().resolve("slow"));
    HeadStream stream =
        new Simulation(built.bench(), built.out().resolve("slow/head.elf"))
            .seconds(10).say(0.3, "INIT").say(5, "*IDN?").run().stream();
    assertEquals(List.of(), stream.refused());
    assertEquals(List.of("SAGWRIGHT,BH-328,0,1.0.0"), stream.replies());
    assertTrue(stream.withFlags(HeadLine.DROPPED) > 120);
    List<Integer> missing = stream.missing();
    for (int i = 1; i < stream.readings().size(); i++) {
      boolean dropped = (stream.readings().get(i).flags() & HeadLine.DROPPED) != 0;
      assertEquals(missing.get(i) > 0, dropped, "at reading " + i);
    }
  }

  @Test
  void aRestartBeginsCountAndTimeAnewAndWaitsForInit(Simulation simulation) throws Exception {
    HeadStream stream =
        simulation
            .seconds(4)
            .say(0.3, "INIT")
            .with("restart-at", 2)
            .say(2.5, "INIT")
            .run()
            .stream();
    List<HeadLine> readings = stream.readings();
    int restart = 1;
    while (readings.get(restart).timeUs() > readings.get(restart - 1).timeUs()) {
      restart++;
    }
    assertEquals(0, readings.get(restart).seq());
    assertEquals(0.475, readings.get(restart).timeUs() * 1e-6, 0.025); // 0.5 s after the restart
    assertEquals(readings.size(), stream.withFlags(0));
  }

  @Test
  void aMainLoopThatHangsIsRestartedByTheWatchdogWhichSaysSo(Simulation simulation)
      throws Exception {
    Simulation.Outcome outcome =
        simulation
            .seconds(4)
            .say(0.3, "INIT")
            .with("hang-at", 2)
            .say(3, "SYST:ERR?")
            .say(3.1, "SYST:ERR?")
            .say(3.2, "INIT")
            .run();
    assertEquals(1, outcome.reported("resets"));
    assertEquals(
        List.of("-310,\"System error;watchdog\"", "0,\"No error\""), outcome.stream().replies());
    assertTrue(outcome.stream().readings().get(140).timeUs() < 2_000_000);
    assertEquals(List.of(), outcome.stream().refused().stream().skip(1).toList());
  }

  @Test
  void commandsAreAnsweredAndWrongOnesQueued(Simulation simulation) throws Exception {
    HeadStream stream =
        simulation
            .seconds(3)
            .say(0.2, "*IDN?")
            .say(0.3, "SAMP:RATE 10")
            .say(0.35, "SAMP:RATE?")
            .say(0.4, "INIT")
            .say(0.5, "SAMP:RATE 50")
            .say(0.6, "NONSENSE")
            .say(0.7, "INIT")
            .say(0.8, "SYST:ERR?")
            .say(0.9, "SYST:ERR?")
            .say(1.0, "SYST:ERR?")
            .say(1.1, "SYST:ERR?")
            .say(2.5, "ABOR")
            .run()
            .stream();
    assertEquals(
        List.of(
            "SAGWRIGHT,BH-328,0,1.0.0",
            "10",
            "-222,\"Data out of range\"",
            "-113,\"Undefined header\"",
            "-213,\"Init ignored\"",
            "0,\"No error\""),
        stream.replies());
    assertEquals(List.of(), stream.refused());
    assertTrue(stream.stepsUs().stream().allMatch(step -> Math.abs(step - 100_000) <= 1));
    long lastUs = stream.readings().get(stream.readings().size() - 1).timeUs();
    assertTrue(lastUs < 2_500_000, () -> "a reading of " + lastUs + " us after ABOR at 2.5 s");
  }
}
