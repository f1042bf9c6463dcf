package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * The bugs that such a program is prone to, put into a copy of it one by one: each must show in
 * what the other tests of this package look at, or those tests prove nothing.
 */
@ExtendWith(BuiltFirmware.class)
class SeededBugsTest {
  private static final String SLOW_INTERRUPT =
      "ISR(TIMER0_COMPA_vect) { something_came = true; __builtin_avr_delay_cycles(1600); }";
  private static final String INTERRUPT = "ISR(TIMER0_COMPA_vect) { something_came = true; }";

  @TempDir Path copy;

  @Test
  void anInterruptWhileTheClockIsHighPutsTheConverterToSleep(BuiltFirmware.Built built)
      throws Exception {
    seed("avr/clock.c", INTERRUPT, SLOW_INTERRUPT);
    Simulation.Outcome locked = sliding(built);
    assertEquals(0, locked.reported("powerDowns"), "the lock holds even against this interrupt");
    seed(
        "avr/converter.c",
        "  ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {\n    PORTB |=",
        "  {\n    PORTB |=");
    Simulation.Outcome open = sliding(built);
    assertTrue(open.reported("powerDowns") > 0);
    assertTrue(open.reported("clockHighLongestUs") > 60);
  }

  /**
   * A converter whose phase against the head's millisecond slides: at a fixed one nothing shows.
   */
  private Simulation.Outcome sliding(BuiltFirmware.Built built) throws Exception {
    return simulate(built).seconds(10).say(0.3, "INIT").with("rate-ppm", 730).run();
  }

  @Test
  void anOverflowThatIsNotLookedAtMovesAStamp(BuiltFirmware.Built built) throws Exception {
    seed("core/clock.h", "if (pending && ticks < 0x8000u) overflows++;", "(void)pending;");
    assertTrue(worstStampUs(sweep(built)) > 30_000);
  }

  @Test
  void anOverflowThatCameAfterTheCaptureMovesAStamp(BuiltFirmware.Built built) throws Exception {
    seed("core/clock.h", "if (pending && ticks < 0x8000u) overflows++;", "overflows += pending;");
    assertTrue(worstStampUs(sweep(built)) > 30_000);
  }

  @Test
  void countsWithoutTheirSignAreOutOfRange(BuiltFirmware.Built built) throws Exception {
    seed(
        "core/wire.c",
        "return (bits & 0x800000ul) ? (int32_t)bits - 0x1000000l : (int32_t)bits;",
        "return (int32_t)bits;");
    HeadStream stream =
        simulate(built).seconds(4).say(0.3, "INIT").with("bend", "-123456,1000").run().stream();
    assertTrue(stream.refused().stream().anyMatch(line -> line.matches(".*,16[67]\\d{5},.*")));
  }

  @Test
  void anIndexThatIsPublishedBeforeItsCharacterSpoilsLines(BuiltFirmware.Built built)
      throws Exception {
    seed(
        "avr/line.c",
        "    send_ring[head] = *text++;\n    send_head = ++head;",
        "    send_head = (uint8_t)(head + 1);\n    send_ring[head++] = *text++;");
    HeadStream stream =
        simulate(built)
            .seconds(10)
            .say(0.02, "INIT")
            .with("period", 16_000_000 / 280)
            .with("noise", 1000)
            .run()
            .stream();
    assertTrue(stream.refused().size() > 0);
  }

  @Test
  void linesPutWithoutLookingForRoomSpoilEachOther(BuiltFirmware.Built built) throws Exception {
    seed("core/head.c", "if (room < LINE_MOST) return 0;", "(void)room;");
    BuiltFirmware.make(copy, "firmware", "BAUD=9600", "OUT=" + copy.resolve("out"));
    HeadStream stream = simulateBuilt(built).seconds(6).say(0.3, "INIT").run().stream();
    assertTrue(stream.refused().size() > 20);
  }

  @Test
  void aGaugeAskedInTheMiddleOfItsFrameAnswersSeldom(BuiltFirmware.Built built) throws Exception {
    seed(
        "avr/indicator.c",
        "coming = incoming.count > 0;",
        "coming = incoming.count > 0 && incoming.count < 26;");
    HeadStream stream = simulate(built).seconds(5).say(0.3, "INIT").run().stream();
    assertTrue(stream.withGauge() < 5 * 10, () -> stream.withGauge() + " gauge values in 4.7 s");
  }

  @Test
  void aGaugeValueGivenToTheNewestReadingMakesAHysteresis(BuiltFirmware.Built built)
      throws Exception {
    seed(
        "core/head.c",
        "uint32_t moment_us = frame->first_us - (uint32_t)(GAUGE_AGE_US);",
        "uint32_t moment_us = frame->last_us + FRAME_SETTLE_US;");
    HeadStream stream = simulate(built).seconds(11).say(0.3, "INIT").run().stream();
    assertTrue(Math.abs(stream.hysteresisPercent()) > 0.5, () -> stream.hysteresisPercent() + " %");
  }

  @Test
  void aLoadStampedWhenItIsReadyMakesAHysteresis(BuiltFirmware.Built built) throws Exception {
    seed("core/head.h", "LOAD_AGE_PERIODS = 2,", "LOAD_AGE_PERIODS = 0,");
    HeadStream stream = simulate(built).seconds(11).say(0.3, "INIT").run().stream();
    assertTrue(Math.abs(stream.hysteresisPercent()) > 0.5, () -> stream.hysteresisPercent() + " %");
  }

  @Test
  void framesTakenWithoutCountingTheirBitsGiveValues(BuiltFirmware.Built built) throws Exception {
    seed("core/gauge.c", "if (frame->count == full)", "if (frame->count > 24 + 0 * full)");
    HeadStream stream =
        simulate(built).seconds(3).say(0.3, "INIT").fault("gauge-short").run().stream();
    assertTrue(stream.withFlags(0) > 0);
  }

  @Test
  void withoutTheWatchdogAHeadThatHangsStaysSilent(BuiltFirmware.Built built) throws Exception {
    seed("avr/main.c", "wdt_enable(WDTO_250MS);", "");
    Simulation.Outcome outcome =
        simulate(built).seconds(4).say(0.3, "INIT").with("hang-at", 2).say(3, "*IDN?").run();
    assertEquals(0, outcome.reported("resets"));
    assertEquals(List.of(), outcome.stream().replies());
  }

  /** Puts a bug into the copy; the first one of a test makes the copy. */
  private void seed(String file, String sound, String bug) throws IOException {
    if (Files.notExists(copy.resolve("Makefile"))) {
      copySources();
    }
    Path target = copy.resolve(file);
    String text = Files.readString(target);
    assertEquals(2, text.split(Pattern.quote(sound), -1).length, file + ": " + sound);
    Files.writeString(target, text.replace(sound, bug));
  }

  private void copySources() throws IOException {
    try (Stream<Path> paths = Files.walk(BuiltFirmware.SOURCES)) {
      for (Path path : paths.toList()) {
        Path to = copy.resolve(BuiltFirmware.SOURCES.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(to);
        } else {
          Files.copy(path, to);
        }
      }
    }
  }

  private Simulation simulate(BuiltFirmware.Built built) throws IOException {
    BuiltFirmware.make(copy, "firmware", "OUT=" + copy.resolve("out"));
    return simulateBuilt(built);
  }

  private Simulation simulateBuilt(BuiltFirmware.Built built) {
    return new Simulation(built.bench(), copy.resolve("out").resolve("head.elf"));
  }

  private HeadStream sweep(BuiltFirmware.Built built) throws Exception {
    return simulate(built)
        .seconds(5)
        .say(0.02, "INIT")
        .with("period", 524_289)
        .with("sweep", -75)
        .run()
        .stream();
  }

  private static double worstStampUs(HeadStream stream) {
    return stream.stepsUs().stream()
        .mapToDouble(step -> Math.abs((int) (step - 32_768)))
        .max()
        .orElseThrow();
  }
}
