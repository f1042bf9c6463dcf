package sagwright.bench.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.bench.ByteLine;
import sagwright.bench.Ending;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.bench.InventedBench;
import sagwright.bench.NullModem;
import sagwright.bench.RecordedRun;
import sagwright.bench.TestPhase;
import sagwright.bench.Waiting;
import sagwright.bench.serial.SerialLineOpener;
import sagwright.run.Samples;

/** A sheet played onto one serial port, and read from another: a null modem between them. */
@Timeout(120)
class SheetPlayerTest {
  private static final Duration LONG = Duration.ofMinutes(1);
  private NullModem modem;
  private final List<AutoCloseable> opened = new ArrayList<>();

  @BeforeEach
  void plugIn() {
    modem = NullModem.open();
  }

  @AfterEach
  void closeAll() throws Exception {
    for (AutoCloseable c : opened) {
      c.close();
    }
    modem.close();
  }

  private static Samples triangle(double spacingS, double greatestN) {
    int half = (int) Math.round(3 / spacingS);
    double[] time = new double[2 * half + 1];
    double[] load = new double[time.length];
    double[] deflection = new double[time.length];
    for (int i = 0; i < time.length; i++) {
      time[i] = 100 + i * spacingS;
      load[i] = 7.1 + greatestN * (1 - Math.abs(i - half) / (double) half);
      deflection[i] = -3 + 0.2437 * load[i];
    }
    return new Samples(time, load, deflection);
  }

  private CompletableFuture<Boolean> emulate(Samples samples, PlayerFaults faults, double speed)
      throws Exception {
    ByteLine far = new SerialLineOpener(modem.farPath(), 115_200).open();
    opened.add(far);
    SheetPlayer player =
        new SheetPlayer(samples, InventedBench.CALIBRATION, faults, PracticeClock.faster(speed));
    CompletableFuture<Boolean> played = new CompletableFuture<>();
    Thread thread =
        new Thread(
            () -> {
              try {
                played.complete(player.play(far));
              } catch (Exception e) {
                played.completeExceptionally(e);
              }
            });
    thread.setDaemon(true);
    thread.start();
    return played;
  }

  private HeadSession session() {
    HeadSession session =
        HeadSession.once(
            new SerialLineOpener(modem.nearPath(), 115_200), HeadTiming.ORDINARY, s -> {});
    opened.add(0, session);
    return session;
  }

  private RecordedRun record() throws Exception {
    return Waiting.on(session().begin(InventedBench.PLAN, raw -> {}, LONG));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0125, 0.04, 0.6})
  void whatIsRecordedIsTheSheetToWithinTheSteps(double spacingS) throws Exception {
    Samples sheet = triangle(spacingS, 20.3);
    emulate(sheet, PlayerFaults.NONE, 8);
    RecordedRun run = record();
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(0, run.line().refused() + run.line().gaps());
    Samples got = run.samples();
    int first = 0;
    while (got.loadN()[first + 1] < 1e-4) {
      first++;
    }
    for (int i = 0; i < sheet.size() - 1; i++) {
      String at = "sample " + i;
      assertEquals(sheet.timeS()[i] - 100, got.timeS()[first + i] - got.timeS()[first], 2e-6, at);
      assertEquals(sheet.loadN()[i] - 7.1, got.loadN()[first + i], 2.6e-5, at);
      assertEquals(0.2437 * (sheet.loadN()[i] - 7.1), got.deflectionMm()[first + i], 0.00101, at);
    }
  }

  @Test
  void itBeginsByItselfWhenNobodyAsks() throws Exception {
    // Nothing is sent to the player: it must begin after its two seconds, at this speed a quarter.
    CompletableFuture<Boolean> played = emulate(triangle(0.02, 5), PlayerFaults.NONE, 8);
    assertTrue(Waiting.on(played));
  }

  @Test
  void aborStopsIt() throws Exception {
    CompletableFuture<Boolean> played = emulate(triangle(0.02, 20), PlayerFaults.NONE, 1);
    HeadSession session = session();
    AtomicReference<RecordedRun> run = new AtomicReference<>();
    session.begin(InventedBench.PLAN, raw -> {}, LONG).thenAccept(run::set);
    Waiting.until(
        () ->
            session.snapshot().test() != null
                && session.snapshot().test().phase() == TestPhase.LOADING,
        () -> session.snapshot().toString());
    session.close();
    assertFalse(Waiting.on(played));
    assertEquals(Ending.LINE_LOST, run.get().ending());
  }

  @Test
  void droppedLinesAreGapsAndFlippedBitsAreRefused() throws Exception {
    emulate(triangle(0.0125, 20.3), new PlayerFaults(3, 0.03, 0.03, 0, false), 8);
    RecordedRun run = record();
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertTrue(run.line().refused() > 5 && run.line().gaps() > 15, run.line().toString());
    assertTrue(run.line().missing() >= run.line().gaps(), run.line().toString());
  }

  @Test
  void aStallIsAGapOfItsLength() throws Exception {
    emulate(triangle(0.0125, 20.3), new PlayerFaults(3, 0, 0, 0.5, false), 8);
    RecordedRun run = record();
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(1, run.line().gaps());
    assertEquals(40, run.line().missing(), 1);
  }

  @Test
  void aRestartEndsTheRun() throws Exception {
    emulate(triangle(0.0125, 20.3), new PlayerFaults(3, 0, 0, 0, true), 8);
    RecordedRun run = record();
    assertEquals(Ending.HEAD_RESTARTED, run.ending());
    assertTrue(run.samples().size() > 200);
  }

  @Test
  void whatAConverterCannotCountIsRefusedBeforeAnythingIsSent() {
    Samples huge = new Samples(new double[] {0, 1}, new double[] {0, 500}, new double[] {0, 1});
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                new SheetPlayer(
                    huge, InventedBench.CALIBRATION, PlayerFaults.NONE, PracticeClock.real()));
    assertTrue(e.getMessage().contains("more counts than a converter has"), e.getMessage());
  }
}
