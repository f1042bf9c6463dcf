package sagwright;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.command.Windows;
import sagwright.job.GuessFirst;
import sagwright.job.PracticeRack;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Guess;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The main job in the real window on the practice bench, by keyboard alone. */
@CacioTest
@Tag("window")
class WholeJobWindowTest {
  /**
   * A practice test takes its own time: some seconds of rest, loading and letting off. What is seen
   * on the way may be gone before a busy machine looks: only what stays is waited for.
   */
  private static final Duration DEADLINE = Duration.ofSeconds(180);

  private static final Keeper KEEPER = new Keeper(InstantSource.system(), "test");

  @TempDir Path folder;
  private CompletableFuture<Void> program;
  private Robot robot;
  private FrameFixture frame;

  @BeforeEach
  void start() {
    robot = BasicRobot.robotWithNewAwtHierarchy();
    robot.settings().delayBetweenEvents(5);
    robot.settings().eventPostingDelay(20);
  }

  @AfterEach
  void end() {
    robot.cleanUp();
  }

  private void open(Path workshop) {
    Windows.WindowRequest request =
        new Windows.WindowRequest(workshop, null, 115_200, null, false, 7);
    program =
        CompletableFuture.runAsync(
            () -> {
              try {
                new WindowStart().open(request);
              } catch (Exception e) {
                throw new AssertionError("the window does not open", e);
              }
            });
    findWindow();
  }

  private void findWindow() {
    frame = WindowFinder.findFrame("window").withTimeout(60_000).using(robot);
  }

  private void close() {
    GuiActionRunner.execute(() -> frame.target().dispose());
    program.join();
  }

  @Test
  void fromAnEmptyRecordToAGradeThatIsThereAfterTheNextStart() {
    Path workshop = folder.resolve("practice.db");
    open(workshop);
    writeBlankDown();
    takeOrder();
    press(KeyEvent.VK_F1);
    waitForFocus("bench.tag");
    typeAndEnter("26-001");
    waitForFocus("Bench.control");
    press(KeyEvent.VK_O);
    waitForFocus("bench.order");
    typeAndEnter("R-0001");
    waitForFocus("Bench.control");
    waitUntil("the head is there", () -> said("stage").startsWith("ready"));
    press(KeyEvent.VK_SPACE);
    waitUntil("a verdict is said", () -> said("answer").contains("in 100"));
    String answer = said("answer");
    assertThat(answer).contains("modulus").contains("GPa");
    close();

    open(workshop);
    press(KeyEvent.VK_F2);
    waitForFocus("rack.filter");
    typeAndEnter("26-001");
    waitForFocus("Rack.control");
    assertThat(said("timeline")).contains("tested").contains("graded");
    close();
  }

  @Test
  void withNothingNamedTheFirstWindowAsksForTheWorkshop() {
    open(null);
    waitForFocus("start.file");
    Path file = folder.resolve("mine.db");
    press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    typeAndEnter(file.toString());
    waitUntil(
        "the workshop is open",
        () -> {
          findWindow();
          return frame.target().getTitle().equals("Sagwright: mine.db");
        });
    waitForFocus("bench.tag");
    assertThat(said("stage")).startsWith("lay a blank");
    assertThat(said("foot")).contains("no bench head is chosen yet");
    assertThat(file).exists();
    close();
  }

  @Test
  void theHandIsAskedFirstAndItsGuessIsKeptBesideTheAnswer() throws WorkshopException {
    Path workshop = folder.resolve("practice.db");
    try (Workshop made = Workshop.openOrCreate(workshop, KEEPER)) {
      new PracticeRack(made, SpeciesTable.published()).fillWhereEmpty();
      new GuessFirst(made).set(true);
    }
    open(workshop);
    waitForFocus("bench.tag");
    typeAndEnter(PracticeRack.FIRST_TAG);
    waitForFocus("bench.guess");
    assertThat(said("rail")).isEqualTo("practice");
    waitUntil("the head is there", () -> said("stage").startsWith("ready"));
    robot.enterText("3.9");
    press(KeyEvent.VK_TAB);
    waitForFocus("bench.hand");
    robot.enterText("TH");
    press(KeyEvent.VK_SPACE); // the pedal, from whichever field
    waitUntil("the bench has answered", () -> said("answer").contains("GPa"));
    press(KeyEvent.VK_G);
    waitUntil(
        "the guess stands beside the answer",
        () -> said("learning.sheet").contains("the hand said 3.90 N/mm: "));
    assertThat(said("learning.sheet")).startsWith("How the hand of TH learns. One guess so far");
    press(KeyEvent.VK_ESCAPE);
    press(KeyEvent.VK_B);
    waitForFocus("bench.tag");
    typeAndEnter(PracticeRack.FIRST_TAG); // laid anew: its answer hides until the next guess
    waitForFocus("bench.guess");
    assertThat(said("answer")).isEmpty();
    assertThat(said("plot")).isEqualTo("Load against deflection: no line yet.");
    close();
    try (Workshop kept = Workshop.open(workshop, KEEPER)) {
      List<Guess> guesses = kept.guesses().all();
      assertThat(guesses).hasSize(1);
      assertThat(guesses.get(0).stiffnessNPerMm()).isEqualTo(3.9);
      assertThat(guesses.get(0).initials()).isEqualTo("TH");
      Run run = kept.runs().run(guesses.get(0).runId());
      assertThat(run.counts()).isTrue();
    }
  }

  @Test
  void theExampleIsMadeOpenedAndMarkedApartFromTheMakersOwn() {
    String home = System.getProperty("user.home");
    System.setProperty("user.home", folder.toString());
    try {
      open(null);
      waitForFocus("start.file");
      press(KeyEvent.VK_F6);
      waitUntil(
          "the example is open",
          () -> {
            findWindow();
            return frame.target().getTitle().equals("Sagwright: the example workshop");
          });
      waitForFocus("bench.tag");
      for (int page : new int[] {KeyEvent.VK_F2, KeyEvent.VK_F3, KeyEvent.VK_F1}) {
        press(page);
        waitUntil("the rail bears its mark", () -> said("rail").equals("example"));
      }
      assertThat(Workshop.exampleFile()).exists();
      assertThat(Workshop.usualFile()).doesNotExist();
      close();
    } finally {
      System.setProperty("user.home", home);
    }
  }

  private void writeBlankDown() {
    press(KeyEvent.VK_F2);
    waitForFocus("rack.filter");
    press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    waitForFocus("blank.tag");
    typeAndEnter("26-001");
    press(KeyEvent.VK_TAB);
    press(KeyEvent.VK_TAB);
    press(KeyEvent.VK_TAB);
    waitForFocus("blank.length");
    typeAndEnter("1490");
    typeAndEnter("395");
    typeAndEnter("11.2");
    for (String left : List.of("grain lines", "run-out", "looks", "pitch")) {
      waitForFocus("blank." + left);
      press(KeyEvent.VK_ENTER);
    }
    waitForFocus("stations.1.1");
    for (String figure : "0 12.5 12.5 1490 31 31".split(" ")) {
      typeAndEnter(figure);
    }
    press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    waitForFocus("Rack.control");
  }

  private void takeOrder() {
    press(KeyEvent.VK_F3);
    waitUntil("the list is read", () -> !said("foot").isEmpty());
    press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    waitForFocus("order.length");
    for (String figure : "1473 9.5 29".split(" ")) {
      typeAndEnter(figure);
    }
    press(KeyEvent.VK_F7); // no knots: on to the ask in the middle
    waitForFocus("ask.middle");
    robot.enterText("2.25");
    press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    waitUntil("the order is kept", () -> said("foot").startsWith("Enter opens an order"));
  }

  private void typeAndEnter(String text) {
    robot.enterText(text);
    press(KeyEvent.VK_ENTER);
  }

  private void press(int key, int... modifiers) {
    for (int modifier : modifiers) {
      robot.pressKey(modifier);
    }
    robot.pressAndReleaseKey(key);
    for (int modifier : modifiers) {
      robot.releaseKey(modifier);
    }
  }

  private String said(String name) {
    return GuiActionRunner.execute(
        () -> {
          Component part = showing(frame.target(), name);
          return part == null ? "" : part.getAccessibleContext().getAccessibleDescription();
        });
  }

  private void waitForFocus(String name) {
    waitUntil(
        name + " has the focus",
        () ->
            GuiActionRunner.execute(
                () -> {
                  Component part = showing(frame.target(), name);
                  return part != null && part.isFocusOwner();
                }));
  }

  private static Component showing(Container root, String name) {
    for (Component child : root.getComponents()) {
      if (name.equals(child.getName()) && child.isShowing()) {
        return child;
      }
      Component found = child instanceof Container inner ? showing(inner, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private void waitUntil(String what, BooleanSupplier holds) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (!holds.getAsBoolean()) {
      assertThat(program).as("the program").isNotCompletedExceptionally();
      assertThat(System.nanoTime()).as("waited in vain until " + what).isLessThan(end);
      robot.waitForIdle();
      Thread.onSpinWait();
    }
  }
}
