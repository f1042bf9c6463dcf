package sagwright;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;

/**
 * The real window, painted into memory, in a program of its own, with somebody at the keyboard who
 * lays a blank and begins a test. Says "begun" when it runs, and "load" when load is asked for.
 */
public final class WindowToBeKilled {
  private static final Duration DEADLINE = Duration.ofSeconds(60);

  private WindowToBeKilled() {}

  public static void main(String[] args) throws Exception {
    new CacioExtension(); // whose class, once it is there, paints all windows into memory
    Thread hands = new Thread(WindowToBeKilled::test, "hands");
    hands.setDaemon(true);
    hands.start();
    Sagwright.main(args);
  }

  private static void test() {
    Robot robot = BasicRobot.robotWithCurrentAwtHierarchyWithoutScreenLock();
    FrameFixture frame =
        WindowFinder.findFrame("window").withTimeout(DEADLINE.toMillis()).using(robot);
    ShowingParts parts = new ShowingParts(frame.target());
    waitUntil(() -> parts.hasFocus("bench.tag"));
    robot.enterText("25-014");
    robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
    waitUntil(() -> parts.hasFocus("Bench.control"));
    waitUntil(() -> parts.said("stage").startsWith("ready"));
    robot.pressAndReleaseKey(KeyEvent.VK_SPACE);
    waitUntil(() -> !parts.said("stage").startsWith("ready"));
    System.out.println("begun");
    waitUntil(() -> parts.said("stage").startsWith("load slowly"));
    System.out.println("load");
  }

  private static void waitUntil(BooleanSupplier holds) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (!holds.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new IllegalStateException("waited in vain");
      }
      GuiActionRunner.execute(() -> {}); // a turn of the event thread
    }
  }
}
