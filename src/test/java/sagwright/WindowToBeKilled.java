package sagwright;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension;
import java.awt.event.KeyEvent;

/**
 * The real window, painted into memory, in a program of its own, with somebody at the keyboard who
 * lays a blank and begins a test. Says "begun" when it runs, and "load" when load is asked for.
 */
public final class WindowToBeKilled {
  private WindowToBeKilled() {}

  public static void main(String[] args) throws Exception {
    new CacioExtension(); // whose class, once it is there, paints all windows into memory
    try (ProgramUnderTest program = ProgramUnderTest.start(args)) {
      program.waitForFocusOn("bench.tag");
      program.line("25-014");
      program.waitForFocusOn("Bench.control");
      program.waitUntil("the head is there", () -> program.said("stage").startsWith("ready"));
      program.press(KeyEvent.VK_SPACE);
      program.waitUntil("the test begins", () -> !program.said("stage").startsWith("ready"));
      System.out.println("begun");
      program.waitUntil("load is asked for", () -> program.said("stage").startsWith("load slowly"));
      System.out.println("load");
      program.join(); // until it is killed
    }
  }
}
