package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.InventedBench;
import sagwright.bench.PseudoTerminal;
import sagwright.bench.ToldHead;
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
  private static final Duration LONGEST = Duration.ofMillis(100);

  /** In the first test of a program classes are read in and nothing is compiled yet. */
  private static final Duration LONGEST_AT_FIRST = Duration.ofSeconds(1);

  private static final double STIFFNESS_N_PER_MM = 4.1034;

  @TempDir Path folder;

  @Test
  void aWholeTestAtAThousandReadingsASecondNeverHoldsTheEventThread() throws Exception {
    String workshop = folder.resolve("workshop.db").toString();
    StringWriter said = new StringWriter();
    assertEquals(
        0,
        ProgramUnderTest.run(
            said,
            "import",
            "docs/examples/25-014.json",
            "docs/examples/R-0007.json",
            "--workshop",
            workshop),
        said.toString());
    try (PseudoTerminal port = PseudoTerminal.heldOpen();
        ToldHead head =
            new ToldHead(port, InventedBench.CALIBRATION, 1000, STIFFNESS_N_PER_MM).start();
        ProgramUnderTest program =
            ProgramUnderTest.start(
                "window",
                "--workshop",
                workshop,
                "--port",
                port.path(),
                "--baud",
                "921600",
                "--calibration",
                "docs/examples/calibration.json")) {
      program.waitForFocusOn("bench.tag");
      try (StallWatch first = watch()) {
        program.line("25-014");
        program.waitForFocusOn("Bench.control");
        program.press(KeyEvent.VK_O);
        program.waitForFocusOn("bench.order");
        program.line("R-0007");
        program.waitForFocusOn("Bench.control");
        program.waitUntil("the head is there", () -> program.said("stage").startsWith("ready"));
        test(program, head, "ready");
        program.waitUntil("the grade is said", () -> program.said("answer").contains("in 100"));
        program.waitUntil("it is to be turned", () -> program.said("stage").startsWith("turn"));
        throughAllPages(program);
        assertShort(first, LONGEST_AT_FIRST);
      }
      program.waitForFocusOn("Bench.control");
      try (StallWatch then = watch()) {
        test(program, head, "turn");
        program.waitUntil(
            "both runs are told", () -> program.said("answer").contains("from runs 1 to 3"));
        throughAllPages(program);
        assertShort(then, LONGEST);
      }
    }
  }

  private static StallWatch watch() {
    return GuiActionRunner.execute(
        () -> StallWatch.begin(ProgramUnderTest.DEADLINE)); // it need log nothing
  }

  private static void assertShort(StallWatch watch, Duration longest) {
    assertTrue(watch.events() > 50, "events: " + watch.events());
    assertTrue(
        watch.worstOwn().compareTo(longest) < 0,
        "by its own doing " + watch.worstOwn() + ", on the wall " + watch.worst());
  }

  /** From one Space to the end of letting off. */
  private static void test(ProgramUnderTest program, ToldHead head, String from) {
    program.press(KeyEvent.VK_SPACE);
    program.waitUntil("the test begins", () -> !program.said("stage").startsWith(from));
    program.waitUntil("load is asked for", () -> program.said("stage").startsWith("load slowly"));
    head.load(19, 6);
    program.waitUntil("the load is on", () -> head.isAt(19));
    head.load(0, 6);
  }

  private static void throughAllPages(ProgramUnderTest program) {
    for (int page :
        new int[] {
          KeyEvent.VK_F2, KeyEvent.VK_F3, KeyEvent.VK_F4, KeyEvent.VK_F5, KeyEvent.VK_F1
        }) {
      program.press(page);
    }
    program.waitForFocusOn("Bench.control");
  }
}
