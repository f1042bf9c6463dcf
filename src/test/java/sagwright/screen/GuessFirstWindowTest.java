package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.bench.BenchView;
import sagwright.screen.bench.GuessExample;

/** A shop that asks the hand first, by keyboard and by pedal. */
@CacioTest
@Tag("window")
class GuessFirstWindowTest {
  private final Mailbox<BenchView> mailbox = new Mailbox<>(BenchExample.empty());
  private final List<String> asked = Collections.synchronizedList(new ArrayList<>());
  private WindowUnderTest window;

  /** Takes every guess but one that is no stiffness. */
  private final class Scripted extends ShopExample.IdleBench {
    @Override
    public void lay(String tag, Reply reply) {
      asked.add("lay " + tag);
      mailbox.put(GuessExample.awaited());
    }

    @Override
    public void guess(String typed, String initials, Reply reply) {
      asked.add("guess " + typed + " by " + initials);
      if (typed.equals("x")) {
        reply.refused("guess: N/mm, or one of supple, easy, middling, firm, stout");
        return;
      }
      mailbox.put(BenchExample.ready());
      reply.done();
    }

    @Override
    public void test() {
      asked.add("test");
    }

    @Override
    public void turnTo(double degrees) {
      asked.add("turn");
    }
  }

  @BeforeEach
  void open() {
    window =
        WindowUnderTest.open(
            () -> {
              Shell shell = new Shell();
              shell.add(new BenchScreen(mailbox, new Scripted()));
              shell.open("Bench");
              return shell;
            });
    window.waitForFocusOn("bench.tag");
    window.type("25-014");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("bench.guess");
  }

  @AfterEach
  void close() {
    window.close();
  }

  private void waitForAsked(String... all) {
    window.waitUntil("asked: " + List.of(all) + ", not " + asked, () -> asked.size() >= all.length);
    assertThat(asked).containsExactly(all);
  }

  @Test
  void enterKeepsTheGuessAndSpaceThenTests() {
    window.type("3,4");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Bench.control");
    window.press(KeyEvent.VK_SPACE);
    waitForAsked("lay 25-014", "guess 3,4 by TH", "test");
  }

  @Test
  void thePedalKeepsTheGuessAndTestsAtOnce() {
    window.type("firm");
    window.press(KeyEvent.VK_SPACE);
    waitForAsked("lay 25-014", "guess firm by TH", "test");
    window.waitForFocusOn("Bench.control");
  }

  @Test
  void aGuessThatIsNoneIsSaidAndBeginsNothing() {
    window.type("x");
    window.press(KeyEvent.VK_SPACE);
    window.waitUntil(
        "the foot complains", () -> window.saidBy("foot").startsWith("guess: N/mm, or one of"));
    window.waitForFocusOn("bench.guess");
    waitForAsked("lay 25-014", "guess x by TH");
  }

  @Test
  void anotherHandSignsWithItsOwnInitials() {
    window.type("3.1");
    window.tabTo("bench.hand");
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type("EW");
    window.press(KeyEvent.VK_ENTER);
    waitForAsked("lay 25-014", "guess 3.1 by EW");
  }

  @Test
  void howTheHandLearnsIsOneKeyAway() {
    window.type("3.4");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Bench.control");
    mailbox.put(GuessExample.answered());
    window.waitUntil(
        "the answer stands beside the guess",
        () -> window.saidBy("learning.sheet").contains("the hand said 3.40 N/mm: 6 % too stiff"));
    window.press(KeyEvent.VK_G);
    window.waitUntil("the chart is seen", () -> window.isSeen("learning.sheet"));
    window.press(KeyEvent.VK_ESCAPE);
    window.waitUntil("the bench is back", () -> !window.isSeen("learning.sheet"));
  }
}
