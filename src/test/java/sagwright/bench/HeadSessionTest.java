package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.bench.serial.SerialLineOpener;

/** A session against heads on real pseudo-terminals, well and badly behaved. */
@Timeout(120)
class HeadSessionTest {
  private static final Duration LONG = Duration.ofMinutes(2);
  private static final HeadTiming QUICK = InventedBench.QUICK;

  /** Lines a second: the head's own clock is what counts, so it may run ahead of the wall's. */
  private static final double FAST = 1500;

  private static final LineJournal NOWHERE = raw -> {};
  private static final Consumer<BenchSnapshot> NOBODY = snapshot -> {};

  @TempDir Path folder;
  private final List<AutoCloseable> opened = new ArrayList<>();

  @AfterEach
  void closeAll() throws Exception {
    for (AutoCloseable c : opened) {
      c.close();
    }
  }

  private <T extends AutoCloseable> T closing(T what) {
    opened.add(0, what);
    return what;
  }

  private PseudoTerminal terminal() {
    return closing(PseudoTerminal.heldOpen());
  }

  private HeadSession lasting(String path) {
    return closing(HeadSession.lasting(new SerialLineOpener(path, 115_200), QUICK, NOBODY));
  }

  private HeadSession once(String path) {
    return closing(HeadSession.once(new SerialLineOpener(path, 115_200), QUICK, NOBODY));
  }

  private static List<byte[]> lines(Scene scene) {
    return scene.readings().stream().map(WireFormat::bytes).toList();
  }

  private static Scene ordinary(double rate) {
    return new Scene(rate, 5).rest(1).to(20.5, 2).to(0, 1.5).rest(2);
  }

  private static CompletableFuture<RecordedRun> begin(HeadSession session) {
    return session.begin(InventedBench.PLAN, NOWHERE, LONG);
  }

  /** What is sent before is thrown away. */
  private static void untilOpen(HeadSession session) {
    Waiting.until(
        () -> session.snapshot().link() == LinkState.ASKING, () -> session.snapshot().toString());
  }

  /** A loading that goes on for seconds, even as fast as it is played here. */
  private static Scene longLoading() {
    return new Scene(80, 5).rest(1).to(15, 3).to(15.5, 120);
  }

  private static void untilLoading(HeadSession session) {
    Waiting.until(
        () -> session.snapshot().test() != null && session.snapshot().test().greatestLoadN() > 5,
        () -> session.snapshot().toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {80, 230, 1000})
  void aWholeTestOverASerialPortLosesNothing(double rate) throws Exception {
    PseudoTerminal terminal = terminal();
    PlayedHead head =
        closing(new PlayedHead(terminal, lines(ordinary(rate)), Math.max(FAST, rate)).start());
    ByteArrayOutputStream kept = new ByteArrayOutputStream();
    HeadSession session = once(terminal.path());
    RecordedRun run = Waiting.on(session.begin(InventedBench.PLAN, kept::writeBytes, LONG));
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(new LineStatistics(run.line().readings(), 0, 0, 0), run.line());
    assertEquals(run.line().readings(), run.samples().size());
    assertEquals(new HeadIdentity("played", "7", "0.1"), session.snapshot().identity());
    assertEquals(LinkState.READING, session.snapshot().link());
    assertEquals(TestPhase.DONE, session.snapshot().test().phase());
    // A head that sends before it was asked to need not be asked: a slow machine may see that.
    assertTrue(head.heard().startsWith("*IDN?\n"), head.heard());
    RecordedRun again = TestReplay.of(kept.toByteArray(), InventedBench.PLAN, Ending.CUT_OFF);
    assertEquals(Ending.LOAD_OFF, again.ending());
    assertArrayEquals(run.samples().loadN(), again.samples().loadN());
    assertArrayEquals(run.samples().deflectionMm(), again.samples().deflectionMm());
    assertArrayEquals(run.samples().timeS(), again.samples().timeS());
    session.close();
    Waiting.until(() -> head.heard().endsWith("ABOR\n"), head::heard);
  }

  @Test
  void aHeadThatOnlySendsIsServed() throws Exception {
    PseudoTerminal terminal = terminal();
    PlayedHead head =
        new PlayedHead(terminal, lines(ordinary(80)), FAST) {
          {
            isMeasuring = true;
          }

          @Override
          protected String answer(String command) {
            return "";
          }
        };
    HeadSession session = lasting(terminal.path());
    CompletableFuture<RecordedRun> run = begin(session);
    untilOpen(session);
    closing(head.start());
    assertEquals(Ending.LOAD_OFF, Waiting.on(run).ending());
    assertNull(session.snapshot().identity());
  }

  @Test
  void aHeadThatRestartsWhenItsPortIsOpenedIsAskedAgain() throws Exception {
    PseudoTerminal terminal = terminal();
    PlayedHead deafAtFirst =
        closing(
            new PlayedHead(terminal, lines(ordinary(80)), FAST) {
              private int heard;

              @Override
              protected String answer(String command) {
                return ++heard <= 4 ? "boot " + heard + "\n" : super.answer(command);
              }
            }.start());
    HeadSession session = lasting(terminal.path());
    assertEquals(Ending.LOAD_OFF, Waiting.on(begin(session)).ending());
    assertTrue(deafAtFirst.heard().split("\\*IDN\\?").length > 2, deafAtFirst.heard());
  }

  @Test
  void staleLinesOfAnEarlierDayAreNoPartOfTheRun() throws Exception {
    PseudoTerminal terminal = terminal();
    terminal.write("17,4\u00ff\n".getBytes(StandardCharsets.ISO_8859_1));
    for (int i = 0; i < 12; i++) {
      terminal.write(
          WireFormat.bytes(new Reading(40_000 + i, 77_000_000 + 12_500L * i, 999_999, 9L, 0)));
    }
    terminal.write("$SG,40012,7715".getBytes(StandardCharsets.US_ASCII));
    closing(new PlayedHead(terminal, lines(ordinary(80)), FAST).start());
    RecordedRun run = Waiting.on(begin(once(terminal.path())));
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(Scene.REST_COUNTS, run.zero().loadCounts(), 100);
    assertEquals(0, run.samples().loadN()[0], 0.05);
  }

  @Test
  void aHeadThatBeganWhileTheProgramWasStartingLosesNothing() throws Exception {
    PseudoTerminal terminal = terminal();
    PlayedHead head =
        closing(
            new PlayedHead(terminal, lines(ordinary(80)), FAST) {
              {
                isMeasuring = true;
              }

              @Override
              protected String answer(String command) {
                return "";
              }
            }.start());
    Waiting.until(() -> head.sent() >= 60, () -> "sent " + head.sent());
    RecordedRun run = Waiting.on(begin(once(terminal.path())));
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(new LineStatistics(run.line().readings(), 0, 0, 0), run.line());
    assertEquals(0, run.samples().loadN()[0], 0.05);
  }

  @Test
  void aPulledPlugEndsTheRunAndKeepsWhatWasReadAndTheLineIsFoundAgain() throws Exception {
    Path link = folder.resolve("bench-head");
    PseudoTerminal first = terminal();
    first.putAt(link);
    PlayedHead head =
        closing(new PlayedHead(first, lines(new Scene(80, 5).rest(1).to(15, 3)), FAST).start());
    HeadSession session = lasting(link.toString());
    CompletableFuture<RecordedRun> cut = begin(session);
    int all = lines(new Scene(80, 5).rest(1).to(15, 3)).size();
    Waiting.until(() -> head.sent() == all, () -> "sent " + head.sent());
    Waiting.until(
        () -> session.snapshot().line().readings() >= all, () -> session.snapshot().toString());
    PseudoTerminal second = terminal();
    first.close();
    RecordedRun run = Waiting.on(cut);
    assertEquals(Ending.LINE_LOST, run.ending());
    assertEquals(all, run.samples().size());
    assertFalse(run.allowsAnswer());
    Waiting.until(
        () -> session.snapshot().link() != LinkState.READING, () -> session.snapshot().toString());
    assertEquals(Ending.LINE_LOST, run.ending());
    closing(new PlayedHead(second, lines(ordinary(80)), FAST).start());
    second.putAt(link);
    RecordedRun whole = Waiting.on(begin(session));
    assertEquals(Ending.LOAD_OFF, whole.ending());
    assertEquals(0, whole.line().gaps());
  }

  @Test
  void aHeadThatFallsSilentEndsTheTestAndSaysSo() throws Exception {
    PseudoTerminal terminal = terminal();
    closing(
        new PlayedHead(terminal, lines(new Scene(80, 5).rest(1).to(20.5, 2).to(9, 1)), FAST)
            .start());
    List<String> said = new java.util.concurrent.CopyOnWriteArrayList<>();
    HeadSession session =
        closing(
            HeadSession.lasting(
                new SerialLineOpener(terminal.path(), 115_200),
                QUICK,
                s -> said.add(s.linkInWords())));
    RecordedRun run = Waiting.on(begin(session));
    assertEquals(Ending.HEAD_SILENT, run.ending());
    assertTrue(run.cameOffPeak() && run.allowsAnswer());
    Waiting.until(() -> said.stream().anyMatch(s -> s.contains("fallen silent")), said::toString);
  }

  @Test
  void aHeadThatNeverSendsIsSaidAndTheTestEndsWhenItsTimeIsUp() throws Exception {
    PseudoTerminal terminal = terminal();
    HeadSession session = lasting(terminal.path());
    RecordedRun run =
        Waiting.on(session.begin(InventedBench.PLAN, NOWHERE, Duration.ofMillis(1800)));
    assertEquals(Ending.TIMED_OUT, run.ending());
    assertEquals(0, run.samples().size());
    Waiting.until(
        () -> session.snapshot().linkInWords().startsWith("nothing comes from " + terminal.path()),
        () -> session.snapshot().linkInWords());
    assertEquals(LinkState.ASKING, session.snapshot().link());
  }

  @Test
  void anotherDevicesChatterIsShownAndNamedAsSuch() throws Exception {
    PseudoTerminal terminal = terminal();
    List<byte[]> chatter = new ArrayList<>();
    for (int i = 0; i < 5_000; i++) {
      chatter.add("$GPGSV,3,1,11,03,03,111,00*74\r\n".getBytes(StandardCharsets.US_ASCII));
    }
    PlayedHead gps =
        new PlayedHead(terminal, chatter, 100) {
          {
            isMeasuring = true;
          }

          @Override
          protected String answer(String command) {
            return "";
          }
        };
    closing(gps.start());
    HeadSession session = lasting(terminal.path());
    Waiting.until(
        () -> session.snapshot().linkInWords().contains("is no bench head"),
        () -> session.snapshot().linkInWords());
    assertTrue(session.snapshot().line().refused() > 10);
    assertTrue(session.snapshot().lastRefused().startsWith("«$GPGSV"));
    assertNull(session.snapshot().newest());
  }

  @Test
  void garbledAndLostLinesAreCountedAndTheRunGoesOn() throws Exception {
    List<byte[]> lines = new ArrayList<>(lines(ordinary(80)));
    int gaps = 0;
    int refused = 0;
    for (int i = 380; i > 100; i -= 20) {
      if (i % 40 == 0) {
        lines.remove(i);
      } else {
        lines.get(i)[9] ^= 4;
        refused++;
      }
      gaps++;
    }
    PseudoTerminal terminal = terminal();
    closing(new PlayedHead(terminal, lines, 160).start());
    RecordedRun run = Waiting.on(begin(lasting(terminal.path())));
    assertEquals(Ending.LOAD_OFF, run.ending());
    assertEquals(new LineStatistics(run.line().readings(), refused, gaps, gaps), run.line());
  }

  @Test
  void aHeadThatTakesNoCommandsHoldsNobodyUp() throws Exception {
    PseudoTerminal terminal = terminal(); // nobody reads its far side: writes fill it up
    HeadSession session =
        closing(
            HeadSession.lasting(
                new SerialLineOpener(terminal.path(), 115_200),
                new HeadTiming(
                    Duration.ZERO,
                    Duration.ofNanos(1),
                    Duration.ofSeconds(5),
                    Duration.ofMillis(50)),
                NOBODY));
    CompletableFuture<RecordedRun> run = begin(session);
    untilOpen(session);
    for (byte[] line : lines(ordinary(80))) {
      terminal.write(line);
    }
    assertEquals(Ending.LOAD_OFF, Waiting.on(run).ending());
    long start = System.nanoTime();
    session.close();
    assertTrue(System.nanoTime() - start < 5e9, "closing has its deadline");
  }

  @Test
  void aPortThatDoesNotOpenFailsATestOfOneGoAndIsTriedAgainByALastingSession() throws Exception {
    String path = folder.resolve("later").toString();
    HeadSession once = once(path);
    ExecutionException e = assertThrows(ExecutionException.class, () -> Waiting.on(begin(once)));
    assertEquals(LineNotOpenedException.class, e.getCause().getClass());
    assertTrue(e.getCause().getMessage().contains("there is no port " + path));
    HeadSession session = lasting(path);
    CompletableFuture<RecordedRun> run = begin(session);
    Waiting.until(
        () -> session.snapshot().link() == LinkState.NOT_OPENED,
        () -> session.snapshot().toString());
    PseudoTerminal terminal = terminal();
    closing(new PlayedHead(terminal, lines(ordinary(80)), FAST).start());
    terminal.putAt(Path.of(path));
    assertEquals(Ending.LOAD_OFF, Waiting.on(run).ending());
  }

  @Test
  void spaceAndEscEndATestAndASecondOneMayNotBeginBesideIt() throws Exception {
    PseudoTerminal terminal = terminal();
    closing(
        new PlayedHead(terminal, lines(new Scene(80, 5).rest(1).to(12, 2).rest(60)), 160).start());
    HeadSession session = lasting(terminal.path());
    CompletableFuture<RecordedRun> first = begin(session);
    untilLoading(session);
    ExecutionException e = assertThrows(ExecutionException.class, () -> Waiting.on(begin(session)));
    assertEquals(IllegalStateException.class, e.getCause().getClass());
    session.end(Ending.ENDED_BY_HAND);
    assertEquals(Ending.ENDED_BY_HAND, Waiting.on(first).ending());
    CompletableFuture<RecordedRun> second = begin(session);
    session.end(Ending.BROKEN_OFF);
    assertEquals(Ending.BROKEN_OFF, Waiting.on(second).ending());
    assertFalse(Waiting.on(second).allowsAnswer());
  }

  @Test
  void aJournalThatTakesNoMoreEndsTheRunAndSaysSo() throws Exception {
    PseudoTerminal terminal = terminal();
    closing(new PlayedHead(terminal, lines(ordinary(80)), FAST).start());
    HeadSession session = lasting(terminal.path());
    int[] left = {200};
    RecordedRun run =
        Waiting.on(
            session.begin(
                InventedBench.PLAN,
                raw -> {
                  if (--left[0] < 0) {
                    throw new IOException("no space left on device");
                  }
                },
                LONG));
    assertEquals(Ending.NOT_KEPT, run.ending());
    assertTrue(run.samples().size() <= 200 && run.samples().size() > 190);
  }

  @Test
  void aFaultOfTheProgramFailsTheTestAndTheSessionGoesOn() throws Exception {
    PseudoTerminal terminal = terminal();
    PlayedHead faulty = closing(new PlayedHead(terminal, lines(ordinary(80)), FAST).start());
    HeadSession session = lasting(terminal.path());
    CompletableFuture<RecordedRun> run =
        session.begin(
            InventedBench.PLAN,
            raw -> {
              throw new IllegalArgumentException("a fault on purpose");
            },
            LONG);
    ExecutionException e = assertThrows(ExecutionException.class, () -> Waiting.on(run));
    assertEquals("a fault on purpose", e.getCause().getMessage());
    faulty.close();
    closing(new PlayedHead(terminal, lines(ordinary(80)), FAST).start());
    assertEquals(Ending.LOAD_OFF, Waiting.on(begin(session)).ending());
  }

  @Test
  void closingInMidTestEndsItAndKeepsWhatWasRead() throws Exception {
    PseudoTerminal terminal = terminal();
    closing(new PlayedHead(terminal, lines(longLoading()), FAST).start());
    HeadSession session = lasting(terminal.path());
    CompletableFuture<RecordedRun> run = begin(session);
    untilLoading(session);
    session.close();
    assertEquals(Ending.LINE_LOST, Waiting.on(run).ending());
    assertTrue(Waiting.on(run).samples().size() > 80);
    assertEquals(LinkState.CLOSED, session.snapshot().link());
    assertThrows(ExecutionException.class, () -> Waiting.on(begin(session)));
    assertTrue(
        Thread.getAllStackTraces().keySet().stream()
            .noneMatch(t -> t.getName().equals("head-reader") && t.isAlive()),
        "no thread is left behind");
  }

  @Test
  void aSessionThatWasClosedBeforeItsTestSaysSo() {
    HeadSession session = once(folder.resolve("none").toString());
    session.close();
    ExecutionException e = assertThrows(ExecutionException.class, () -> Waiting.on(begin(session)));
    assertEquals(IllegalStateException.class, e.getCause().getClass());
    assertEquals(LinkState.CLOSED, session.snapshot().link());
  }

  @Test
  void theLinesHealthIsToldFromWhatCame() throws Exception {
    PseudoTerminal terminal = terminal();
    closing(new PlayedHead(terminal, lines(new Scene(80, 5).rest(60)), FAST).start());
    HeadSession session = lasting(terminal.path());
    Waiting.until(
        () -> session.snapshot().line().readings() >= 790, () -> session.snapshot().toString());
    HealthReport health = session.health(InventedBench.CALIBRATION);
    assertEquals(80, health.readingsPerSecond(), 0.01);
    assertEquals(0.004, health.loadNoiseN(), 0.0005);
    assertNotNull(health.spectrum());
    Waiting.until(
        () -> session.snapshot().readingsPerSecond() > 50, () -> session.snapshot().toString());
  }
}
