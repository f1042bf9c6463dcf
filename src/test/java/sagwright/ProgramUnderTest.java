package sagwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Frame;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Collection;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.core.matcher.FrameMatcher;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import sagwright.command.Console;
import sagwright.screen.Keyboard;

/** The whole program in its own window, painted into memory, worked by its keys alone. */
final class ProgramUnderTest implements AutoCloseable {
  /**
   * A practice test takes its own time: some seconds of rest, loading and letting off. What is seen
   * on the way may be gone before a busy machine looks: only what stays is to be waited for.
   */
  static final Duration DEADLINE = Duration.ofSeconds(180);

  private static final String WINDOW = "window";

  private final StringWriter said = new StringWriter();
  private final CompletableFuture<Integer> program;
  private final Robot robot;
  private final Keyboard keyboard;
  private Frame frame; // null until there is one

  private ProgramUnderTest(String... args) {
    robot = BasicRobot.robotWithNewAwtHierarchyWithoutScreenLock(); // other tests' windows are not
    keyboard = new Keyboard(robot);
    program = CompletableFuture.supplyAsync(() -> run(said, args));
  }

  /** Starts it with these words of the command line, and waits for its window. */
  static ProgramUnderTest start(String... args) {
    FailOnThreadViolationRepaintManager.install();
    ProgramUnderTest started = new ProgramUnderTest(args);
    started.waitForWindow("has opened", FrameMatcher.withName(WINDOW).andShowing());
    return started;
  }

  /** Runs a command to its end and gives its exit code. */
  static int run(StringWriter said, String... args) {
    PrintWriter out = new PrintWriter(said);
    return Sagwright.run(new Console(new ByteArrayInputStream(new byte[0]), out, out), args);
  }

  private void waitForWindow(String what, FrameMatcher window) {
    waitUntil(
        "its window " + what,
        () -> {
          Collection<Frame> found = robot.finder().findAll(window);
          found.forEach(one -> frame = one);
          return found.size() == 1;
        });
  }

  /** Presses and lets go one key, with its modifiers, and waits for what comes of it. */
  void press(int keyCode, int... modifiers) {
    keyboard.press(keyCode, modifiers);
    robot.waitForIdle();
  }

  void type(String text) {
    keyboard.type(text);
  }

  /** Types a text and Enter. */
  void line(String text) {
    keyboard.line(text);
    robot.waitForIdle();
  }

  /** What a part that is seen says of itself to whoever does not see it; else empty. */
  String said(String name) {
    return frame == null ? "" : new ShowingParts(frame).said(name);
  }

  void waitForFocusOn(String name) {
    waitUntil(name + " has the focus", () -> new ShowingParts(frame).hasFocus(name));
  }

  /** Waits for the window that follows on another. */
  void waitForTitle(String title) {
    waitForWindow("is called " + title, FrameMatcher.withName(WINDOW).andTitle(title).andShowing());
  }

  void waitUntil(String what, BooleanSupplier holds) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (!holds.getAsBoolean()) {
      assertThat(program).as("the program, which has said: %s", said).isNotDone();
      assertThat(System.nanoTime())
          .as("waited in vain until %s; the stage says: %s", what, said("stage"))
          .isLessThan(end);
      robot.waitForIdle();
    }
  }

  /** Waits until somebody else has ended it. */
  void join() {
    program.join();
  }

  /** Closes its window, and sees that it ends well. */
  @Override
  public void close() throws Exception {
    try {
      GuiActionRunner.execute(() -> frame.dispose());
      int exit = program.get(DEADLINE.toSeconds(), TimeUnit.SECONDS);
      assertThat(exit).as("exit code of the program, which has said: %s", said).isZero();
    } finally {
      robot.cleanUp();
    }
  }
}
