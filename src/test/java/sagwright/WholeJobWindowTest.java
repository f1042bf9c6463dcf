package sagwright;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.job.GuessFirst;
import sagwright.job.PracticeRack;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Guess;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;

/** The main job in the real window on the practice bench, by keyboard alone. */
@CacioTest
@Tag("window")
class WholeJobWindowTest {
  private static final Keeper KEEPER = new Keeper(InstantSource.system(), "test");

  @TempDir Path folder;
  private ProgramUnderTest program;

  private void openPractice(Path workshop) {
    program = ProgramUnderTest.start("window", "--workshop", workshop.toString(), "--seed", "7");
  }

  private void openWithNothingNamed() {
    program = ProgramUnderTest.start("window", "--seed", "7");
  }

  @AfterEach
  void close() throws Exception {
    if (program != null) {
      program.close();
      program = null;
    }
  }

  @Test
  void fromAnEmptyRecordToAGradeThatIsThereAfterTheNextStart() throws Exception {
    Path workshop = folder.resolve("practice.db");
    openPractice(workshop);
    writeBlankDown();
    takeOrder();
    program.press(KeyEvent.VK_F1);
    program.waitForFocusOn("bench.tag");
    program.line("26-001");
    program.waitForFocusOn("Bench.control");
    program.press(KeyEvent.VK_O);
    program.waitForFocusOn("bench.order");
    program.line("R-0001");
    program.waitForFocusOn("Bench.control");
    waitForHead();
    program.press(KeyEvent.VK_SPACE);
    program.waitUntil("a verdict is said", () -> program.said("answer").contains("in 100"));
    assertThat(program.said("answer")).contains("modulus").contains("GPa");
    close();

    openPractice(workshop);
    program.press(KeyEvent.VK_F2);
    program.waitForFocusOn("rack.filter");
    program.line("26-001");
    program.waitForFocusOn("Rack.control");
    assertThat(program.said("timeline")).contains("tested").contains("graded");
  }

  @Test
  void withNothingNamedTheFirstWindowAsksForTheWorkshop() {
    openWithNothingNamed();
    program.waitForFocusOn("start.file");
    Path file = folder.resolve("mine.db");
    program.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    program.line(file.toString());
    program.waitForTitle("Sagwright: mine.db");
    program.waitForFocusOn("bench.tag");
    assertThat(program.said("stage")).startsWith("lay a blank");
    assertThat(program.said("foot")).contains("no bench head is chosen yet");
    assertThat(file).exists();
  }

  @Test
  void theHandIsAskedFirstAndItsGuessIsKeptBesideTheAnswer() throws Exception {
    Path workshop = folder.resolve("practice.db");
    try (Workshop made = Workshop.openOrCreate(workshop, KEEPER)) {
      new PracticeRack(made, SpeciesTable.published()).fillWhereEmpty();
      new GuessFirst(made).set(true);
    }
    openPractice(workshop);
    program.waitForFocusOn("bench.tag");
    program.line(PracticeRack.FIRST_TAG);
    program.waitForFocusOn("bench.guess");
    assertThat(program.said("rail")).isEqualTo("practice");
    waitForHead();
    program.type("3.9");
    program.press(KeyEvent.VK_TAB);
    program.waitForFocusOn("bench.hand");
    program.type("TH");
    program.press(KeyEvent.VK_SPACE); // the pedal, from whichever field
    program.waitUntil("the bench has answered", () -> program.said("answer").contains("GPa"));
    program.press(KeyEvent.VK_G);
    program.waitUntil(
        "the guess stands beside the answer",
        () -> program.said("learning.sheet").contains("the hand said 3.90 N/mm: "));
    assertThat(program.said("learning.sheet"))
        .startsWith("How the hand of TH learns. One guess so far");
    program.press(KeyEvent.VK_ESCAPE);
    program.press(KeyEvent.VK_B);
    program.waitForFocusOn("bench.tag");
    program.line(PracticeRack.FIRST_TAG); // laid anew: its answer hides until the next guess
    program.waitForFocusOn("bench.guess");
    assertThat(program.said("answer")).isEmpty();
    assertThat(program.said("plot")).isEqualTo("Load against deflection: no line yet.");
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
  void theExampleIsMadeOpenedAndMarkedApartFromTheMakersOwn() throws Exception {
    String home = System.getProperty("user.home");
    System.setProperty("user.home", folder.toString());
    try {
      openWithNothingNamed();
      program.waitForFocusOn("start.file");
      program.press(KeyEvent.VK_F6);
      program.waitForTitle("Sagwright: the example workshop");
      program.waitForFocusOn("bench.tag");
      for (int page : new int[] {KeyEvent.VK_F2, KeyEvent.VK_F3, KeyEvent.VK_F1}) {
        program.press(page);
        program.waitUntil("the rail bears its mark", () -> program.said("rail").equals("example"));
      }
      assertThat(Workshop.exampleFile()).exists();
      assertThat(Workshop.usualFile()).doesNotExist();
      close();
    } finally {
      System.setProperty("user.home", home);
    }
  }

  private void waitForHead() {
    program.waitUntil("the head is there", () -> program.said("stage").startsWith("ready"));
  }

  private void writeBlankDown() {
    program.press(KeyEvent.VK_F2);
    program.waitForFocusOn("rack.filter");
    program.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    program.waitForFocusOn("blank.tag");
    program.line("26-001");
    program.press(KeyEvent.VK_TAB);
    program.press(KeyEvent.VK_TAB);
    program.press(KeyEvent.VK_TAB);
    program.waitForFocusOn("blank.length");
    program.line("1490");
    program.line("395");
    program.line("11.2");
    for (String left : List.of("grain lines", "run-out", "looks", "pitch")) {
      program.waitForFocusOn("blank." + left);
      program.press(KeyEvent.VK_ENTER);
    }
    program.waitForFocusOn("stations.1.1");
    for (String figure : "0 12.5 12.5 1490 31 31".split(" ")) {
      program.line(figure);
    }
    program.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    program.waitForFocusOn("Rack.control");
  }

  private void takeOrder() {
    program.press(KeyEvent.VK_F3);
    program.waitUntil("the list is read", () -> !program.said("foot").isEmpty());
    program.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    program.waitForFocusOn("order.length");
    for (String figure : "1473 9.5 29".split(" ")) {
      program.line(figure);
    }
    program.press(KeyEvent.VK_F7); // no knots: on to the ask in the middle
    program.waitForFocusOn("ask.middle");
    program.type("2.25");
    program.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    program.waitUntil(
        "the order is kept", () -> program.said("foot").startsWith("Enter opens an order"));
  }
}
