package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.command.Console;

/**
 * The main job end to end in the real window, by keyboard alone: from an empty workshop to a grade
 * on the blank's record, with the practice bench standing in for hardware.
 */
@CacioTest
@Tag("window")
class WholeTestByKeyboardWindowTest {
  private static final Duration DEADLINE = Duration.ofSeconds(60);
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;
  private Robot robot;

  private static CompletableFuture<Integer> start(String... args) {
    return CompletableFuture.supplyAsync(() -> Sagwright.run(console(new StringWriter()), args));
  }

  private static Console console(StringWriter out) {
    return new Console(
        new ByteArrayInputStream(new byte[0]), new PrintWriter(out), new PrintWriter(out));
  }

  private static JsonNode record(Path workshop, String tag) throws Exception {
    StringWriter out = new StringWriter();
    int exit =
        Sagwright.run(
            console(out), "blank", "--workshop", workshop.toString(), "--blank", tag, "--json");
    assertEquals(0, exit, out.toString());
    return JSON.readTree(out.toString());
  }

  @Test
  void fromAnEmptyWorkshopToAGradeOnTheRecord() throws Exception {
    FailOnThreadViolationRepaintManager.install();
    Path workshop = folder.resolve("workshop.db");
    CompletableFuture<Integer> program =
        start("window", "--workshop", workshop.toString(), "--seed", "5");
    robot = BasicRobot.robotWithCurrentAwtHierarchyWithoutScreenLock();
    robot.settings().delayBetweenEvents(5);
    FrameFixture frame =
        WindowFinder.findFrame("window").withTimeout(DEADLINE.toMillis()).using(robot);

    waitForFocusOn("bench.tag");
    press(KeyEvent.VK_F3);
    newOrder();
    press(KeyEvent.VK_F2);
    newBlank();
    waitUntil("the blank is on the record", () -> isThere(workshop, "26-001"));
    waitForFocusOn("Rack.control");
    press(KeyEvent.VK_ENTER); // lays it on the bench
    waitForFocusOn("Bench.control");
    press(KeyEvent.VK_O);
    waitForFocusOn("bench.order");
    line("R-0001");
    waitForFocusOn("Bench.control");
    press(KeyEvent.VK_SPACE);
    waitUntil("the grade is on the record", () -> grades(workshop) == 1);

    JsonNode record = record(workshop, "26-001");
    assertEquals(1, record.get("runs").size());
    assertTrue(record.at("/runs/0/modulusMPa").asDouble() > 5000);
    assertEquals("R-0001", record.at("/grades/0/order").asText());
    GuiActionRunner.execute(() -> frame.target().dispose());
    assertEquals(0, program.get(30, TimeUnit.SECONDS));
    robot.cleanUpWithoutDisposingWindows();
  }

  private void newOrder() {
    pressCtrl(KeyEvent.VK_N);
    waitForFocusOn("order.length");
    line("58 in");
    line("9,5");
    line("29");
    press(KeyEvent.VK_F7); // no knots: on to the ask in the middle
    waitForFocusOn("ask.middle");
    robot.enterText("2,5");
    pressCtrl(KeyEvent.VK_ENTER);
    waitForFocusOn("orders.table");
  }

  private void newBlank() {
    pressCtrl(KeyEvent.VK_N);
    waitForFocusOn("blank.tag");
    line("26-001");
    line("European ash");
    line("near size");
    press(KeyEvent.VK_ENTER); // round
    line("147,3 cm");
    line("410");
    line("11,2");
    for (String left : List.of("grain lines", "run-out", "looks", "pitch")) {
      waitForFocusOn("blank." + left);
      press(KeyEvent.VK_ENTER); // left open
    }
    waitForFocusOn("stations.1.1");
    line("0");
    line("12,5");
    press(KeyEvent.VK_ENTER); // width as depth
    line("1473");
    robot.enterText("31");
    pressCtrl(KeyEvent.VK_ENTER);
  }

  private void line(String text) {
    robot.enterText(text);
    press(KeyEvent.VK_ENTER);
  }

  private void press(int key) {
    robot.pressAndReleaseKey(key);
    robot.waitForIdle();
  }

  private void pressCtrl(int key) {
    robot.pressKey(KeyEvent.VK_CONTROL);
    robot.pressAndReleaseKey(key);
    robot.releaseKey(KeyEvent.VK_CONTROL);
    robot.waitForIdle();
  }

  private static boolean isThere(Path workshop, String tag) {
    StringWriter out = new StringWriter();
    return Sagwright.run(
            console(out), "blank", "--workshop", workshop.toString(), "--blank", tag, "--json")
        == 0;
  }

  private static int grades(Path workshop) {
    try {
      return record(workshop, "26-001").get("grades").size();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static String focusName() {
    return GuiActionRunner.execute(
        () -> {
          Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
          return owner == null || owner.getName() == null ? "" : owner.getName();
        });
  }

  private void waitForFocusOn(String name) {
    waitUntil(
        "the focus is on " + name + ", it is on " + focusName(), () -> focusName().equals(name));
  }

  private interface Condition {
    boolean holds();
  }

  private void waitUntil(String what, Condition condition) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (!condition.holds()) {
      assertTrue(
          System.nanoTime() < end, "waited in vain until " + what + "; focus " + focusName());
      robot.waitForIdle();
    }
  }
}
