package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.InventedBench;
import sagwright.bench.PseudoTerminal;
import sagwright.bench.ToldHead;
import sagwright.command.Console;
import sagwright.screen.StallWatch;

/**
 * A whole test in the real window while a head on a real port sends 1,000 readings a second: the
 * event thread is never busy for long.
 *
 * <p>What is held to the limit is what each event takes by its own doing ({@link
 * StallWatch#worstOwn}), not the time on the wall: where two processors are shared with other tests
 * any thread may stand for a second and more, and nothing in this program could mend that.
 */
@CacioTest
@Tag("window")
class StallWindowTest {
  private static final Duration DEADLINE = Duration.ofSeconds(90);
  private static final Duration LONGEST = Duration.ofMillis(100);

  /** In the first test of a program classes are read in and nothing is compiled yet. */
  private static final Duration LONGEST_AT_FIRST = Duration.ofSeconds(1);

  private static final double STIFFNESS_N_PER_MM = 4.1034;

  @TempDir Path folder;
  private Robot robot;
  private FrameFixture frame;

  private static int run(String... args) {
    PrintWriter out = new PrintWriter(new StringWriter());
    return Sagwright.run(new Console(new ByteArrayInputStream(new byte[0]), out, out), args);
  }

  @Test
  void aWholeTestAtAThousandReadingsASecondNeverHoldsTheEventThread() throws Exception {
    String workshop = folder.resolve("workshop.db").toString();
    assertEquals(
        0,
        run(
            "import",
            "docs/examples/25-014.json",
            "docs/examples/R-0007.json",
            "--workshop",
            workshop));
    try (PseudoTerminal port = PseudoTerminal.heldOpen();
        ToldHead head =
            new ToldHead(port, InventedBench.CALIBRATION, 1000, STIFFNESS_N_PER_MM).start()) {
      String[] window = {
        "window",
        "--workshop",
        workshop,
        "--port",
        port.path(),
        "--baud",
        "921600",
        "--calibration",
        "docs/examples/calibration.json"
      };
      CompletableFuture<Integer> program = CompletableFuture.supplyAsync(() -> run(window));
      robot = BasicRobot.robotWithCurrentAwtHierarchyWithoutScreenLock();
      robot.settings().delayBetweenEvents(5);
      frame = WindowFinder.findFrame("window").withTimeout(DEADLINE.toMillis()).using(robot);
      waitForFocus("bench.tag");
      try (StallWatch first = watch()) {
        line("25-014");
        waitForFocus("Bench.control");
        press(KeyEvent.VK_O);
        waitForFocus("bench.order");
        line("R-0007");
        waitForFocus("Bench.control");
        waitUntil("the head is there", () -> said("stage").startsWith("ready"));
        test(head, "ready");
        waitUntil("the grade is said", () -> said("answer").contains("in 100"));
        waitUntil("it is to be turned", () -> said("stage").startsWith("turn"));
        throughAllPages();
        assertShort(first, LONGEST_AT_FIRST);
      }
      waitForFocus("Bench.control");
      try (StallWatch then = watch()) {
        test(head, "turn");
        waitUntil("both runs are told", () -> said("answer").contains("from runs 1 to 3"));
        throughAllPages();
        assertShort(then, LONGEST);
      }
      GuiActionRunner.execute(() -> frame.target().dispose());
      assertEquals(0, program.get(60, TimeUnit.SECONDS));
    } finally {
      robot.cleanUpWithoutDisposingWindows();
    }
  }

  private static StallWatch watch() {
    return GuiActionRunner.execute(() -> StallWatch.begin(DEADLINE)); // it need log nothing
  }

  private static void assertShort(StallWatch watch, Duration longest) {
    assertTrue(watch.events() > 50, "events: " + watch.events());
    assertTrue(
        watch.worstOwn().compareTo(longest) < 0,
        "by its own doing " + watch.worstOwn() + ", on the wall " + watch.worst());
  }

  /** From one Space to the end of letting off. */
  private void test(ToldHead head, String from) {
    press(KeyEvent.VK_SPACE);
    waitUntil("the test begins", () -> !said("stage").startsWith(from));
    waitUntil("load is asked for", () -> said("stage").startsWith("load slowly"));
    head.load(19, 6);
    waitUntil("the load is on", () -> head.isAt(19));
    head.load(0, 6);
  }

  private void throughAllPages() {
    for (int page :
        new int[] {
          KeyEvent.VK_F2, KeyEvent.VK_F3, KeyEvent.VK_F4, KeyEvent.VK_F5, KeyEvent.VK_F1
        }) {
      press(page);
    }
    waitForFocus("Bench.control");
  }

  private void line(String text) {
    robot.enterText(text);
    press(KeyEvent.VK_ENTER);
  }

  private void press(int key) {
    robot.pressAndReleaseKey(key);
    robot.waitForIdle();
  }

  private String said(String name) {
    return new ShowingParts(frame.target()).said(name);
  }

  private void waitForFocus(String name) {
    waitUntil(name + " has the focus", () -> new ShowingParts(frame.target()).hasFocus(name));
  }

  private void waitUntil(String what, BooleanSupplier holds) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (!holds.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, "waited in vain until " + what + "; " + said("stage"));
      robot.waitForIdle();
    }
  }
}
