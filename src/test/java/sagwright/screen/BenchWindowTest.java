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
import sagwright.beam.SetUp;
import sagwright.screen.bench.BenchActions;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.bench.BenchView;
import sagwright.screen.bench.Phase;

@CacioTest
@Tag("window")
class BenchWindowTest {
  private final Mailbox<BenchView> mailbox = new Mailbox<>(BenchExample.empty());
  private final List<String> asked = Collections.synchronizedList(new ArrayList<>());
  private WindowUnderTest window;

  /** A machine that has much to do: the blank is laid when the test says so. */
  private volatile boolean laysLater;

  /** A bench that goes one step of a test further with each thing that is asked of it. */
  private final class Scripted implements BenchActions {
    @Override
    public void undo() {
      throw new AssertionError("nothing is to be taken back here");
    }

    @Override
    public void lay(String tag, Reply reply) {
      asked.add("lay " + tag);
      if (tag.startsWith("99")) {
        reply.refused("there is no blank " + tag);
      } else if (!laysLater) {
        mailbox.put(BenchExample.ready());
      }
    }

    @Override
    public void tryFor(String order) {
      asked.add("try for " + order);
    }

    @Override
    public void test() {
      boolean runs = mailbox.newest().phase().isRunning();
      asked.add(runs ? "end" : "begin");
      BenchView loaded = BenchExample.loading(12.45);
      mailbox.put(runs ? BenchExample.in(loaded, Phase.DONE, "kept") : loaded);
    }

    @Override
    public void breakOff() {
      asked.add("break off");
      mailbox.put(BenchExample.in(mailbox.newest(), Phase.BROKEN_OFF, ""));
    }

    @Override
    public void turnTo(double degrees) {
      asked.add("turn to " + Math.round(degrees));
    }

    @Override
    public void keepHandRead(HandRead read, Reply reply) {
      asked.add(read.hung() + " g over " + read.dialMm() + " mm");
      reply.done();
    }

    @Override
    public void guess(String typed, String initials, Reply reply) {
      throw new AssertionError("the hand is not asked here");
    }

    @Override
    public void makeSeriesOf(int runs) {
      asked.add("series of " + runs);
    }

    @Override
    public void lookBehind() {
      asked.add("look behind");
    }

    @Override
    public void setUp(SetUp setUp) {
      asked.add(setUp == null ? "usual set-up" : "set up at " + setUp.supportAMm());
    }

    @Override
    public void keepBow(List<Rolled> rolled, Reply reply) {
      asked.add("bow " + rolled);
      reply.done();
    }

    @Override
    public void answer(Choice choice) {
      asked.add("answer " + choice);
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
  }

  @AfterEach
  void close() {
    window.close();
  }

  private void laid() {
    window.waitForFocusOn("bench.tag");
    window.type("25-014");
    window.press(KeyEvent.VK_ENTER);
    waitForStage("ready");
    window.waitForFocusOn("Bench.control");
  }

  private void waitForStage(String says) {
    window.waitUntil("the stage says " + says, () -> window.saidBy("stage").startsWith(says));
  }

  private void waitForAsked(String what) {
    window.waitUntil("asked: " + what, () -> asked.contains(what));
  }

  @Test
  void whatIsTypedBeforeTheBlankIsLaidGoesWhereItWouldGoAfterwards() {
    laysLater = true;
    window.waitForFocusOn("bench.tag");
    window.type("25-014");
    window.press(KeyEvent.VK_ENTER);
    window.press(KeyEvent.VK_O);
    window.waitForFocusOn("bench.order");
    window.type("R-0");
    mailbox.put(BenchExample.ready());
    waitForStage("ready");
    window.type("007");
    assertThat(window.textOf("bench.order")).isEqualTo("R-0007");
    assertThat(window.textOf("bench.tag")).isEqualTo("25-014");
    window.press(KeyEvent.VK_ENTER);
    waitForAsked("try for R-0007");
    window.waitForFocusOn("Bench.control");
    assertThat(asked).containsExactly("lay 25-014", "try for R-0007");
  }

  @Test
  void aTagThatIsNoneLeadsBackToItsFieldToBeTypedOver() {
    window.waitForFocusOn("bench.tag");
    window.type("99-1");
    window.press(KeyEvent.VK_ENTER);
    window.waitForPicked("bench.tag");
    assertThat(window.textOf("bench.tag")).isEqualTo("99-1");
    window.type("25-014"); // over what is picked
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Bench.control");
    assertThat(asked).containsExactly("lay 99-1", "lay 25-014");
  }

  @Test
  void aWholeTestIsDoneByKeyboardAlone() {
    laid();
    window.press(KeyEvent.VK_SPACE);
    waitForStage("load slowly");
    assertThat(window.saidBy("stage")).contains("Load 12.4").contains("deflection 3.9");
    window.waitUntil(
        "Space counts again",
        () -> {
          window.press(KeyEvent.VK_SPACE);
          return asked.contains("end");
        });
    waitForStage("done");
    assertThat(window.saidBy("answer")).contains("modulus 11.18 ± 0.23 GPa").contains("meets");
    assertThat(asked).startsWith("lay 25-014", "begin");
  }

  @Test
  void aHeldSpaceBeginsOneTestAndDoesNotEndIt() {
    laid();
    window.hold(KeyEvent.VK_SPACE);
    window.hold(KeyEvent.VK_SPACE);
    window.hold(KeyEvent.VK_SPACE);
    window.letGo(KeyEvent.VK_SPACE);
    waitForStage("load slowly");
    assertThat(asked).containsExactly("lay 25-014", "begin");
  }

  @Test
  void escBreaksARunningTestOffAndNothingElse() {
    laid();
    window.press(KeyEvent.VK_ESCAPE);
    window.press(KeyEvent.VK_SPACE);
    waitForStage("load slowly");
    window.press(KeyEvent.VK_ESCAPE);
    waitForStage("broken off");
    window.press(KeyEvent.VK_ESCAPE);
    assertThat(asked).containsExactly("lay 25-014", "begin", "break off");
  }

  @Test
  void aLetterActsAtTheControlAndIsTextInAField() {
    laid();
    window.press(KeyEvent.VK_T);
    waitForAsked("turn to 90");
    window.press(KeyEvent.VK_O);
    window.waitForFocusOn("bench.order");
    window.type("t7");
    window.press(KeyEvent.VK_ENTER);
    waitForAsked("try for t7");
    assertThat(asked).containsExactly("lay 25-014", "turn to 90", "try for t7");
  }

  @Test
  void aRunReadByHandIsTypedInPairByPair() {
    laid();
    window.press(KeyEvent.VK_H);
    window.waitForFocusOn("handRead.pairs.1.1");
    for (String figure : List.of("0", "0.00", "500", "1,53", "1 kg", "3.05")) {
      window.type(figure);
      window.press(KeyEvent.VK_ENTER);
    }
    window.press(KeyEvent.VK_ENTER);
    waitForAsked("[0.0, 500.0, 1000.0] g over [0.0, 1.53, 3.05] mm");
    window.waitForFocusOn("Bench.control");
  }

  @Test
  void theFinishedCueIsOneKeyAwayWithAllThatItsForecastHolds() {
    laid();
    mailbox.put(BenchExample.loaded());
    window.waitUntil("there is a forecast", () -> window.saidBy("answer").contains("meets"));
    assertThat(window.saidBy("answer")).contains("inside both asks, 549 g, balance 416 mm");
    window.press(KeyEvent.VK_F);
    window.waitUntil("the finished cue is shown", () -> window.isSeen("finished.plan"));
    assertThat(window.saidBy("finished.plan"))
        .contains("in 25-014: on the bench")
        .contains("finished cue 2.080 ± 0.054 N/mm, meets, over 99 in 100 inside both asks")
        .contains("700–1450: 19.58, meets 20.1 ± 8 %")
        .contains("0.1 mm thinner: ");
    assertThat(window.saidBy("finished.notes"))
        .contains("The grade was 91 in 100, now 97: run 3 is 0.4 % softer.")
        .contains("The splice adds hardly anything at 100–1100, 4.6 % at 700–1450.");
    window.press(KeyEvent.VK_ESCAPE);
    window.waitUntil("the bench is back", () -> !window.isSeen("finished.plan"));
  }

  @Test
  void whatStandsBehindTheAnswerIsOneKeyAwayAndAsksForTheSecondOpinion() {
    laid();
    mailbox.put(BenchExample.loaded());
    waitForStage("done");
    window.press(KeyEvent.VK_W);
    waitForAsked("look behind");
    window.waitUntil(
        "the advice is said",
        () -> window.saidBy("behind.sheet").contains("measure the diameters near 600 mm again"));
    assertThat(window.saidBy("behind.sheet"))
        .contains("the budget agrees")
        .contains("at 12 %")
        .contains("damp summer")
        .contains("no run stands out");
  }

  @Test
  void theSurveySaysWhatToMeasureNextAndSetsItUp() {
    laid();
    mailbox.put(BenchExample.loaded());
    waitForStage("done");
    window.press(KeyEvent.VK_S);
    window.waitUntil(
        "the model is said", () -> window.saidBy("survey.sheet").contains("proposed: straight"));
    window.press(KeyEvent.VK_M);
    waitForAsked("set up at 20.0");
  }

  @Test
  void aBowIsTypedInTurnByTurn() {
    laid();
    window.press(KeyEvent.VK_R);
    window.waitForFocusOn("bow.readings.1.2"); // the usual turns stand there
    for (String reading : List.of("0.31", "0.22", "0", "-0,2")) {
      window.type(reading);
      window.press(KeyEvent.VK_ENTER);
    }
    window.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    waitForAsked(
        "bow [Rolled[turnDegrees=0.0, gaugeMm=0.31], Rolled[turnDegrees=45.0, gaugeMm=0.22],"
            + " Rolled[turnDegrees=90.0, gaugeMm=0.0], Rolled[turnDegrees=135.0, gaugeMm=-0.2]]");
  }

  @Test
  void aFigureMakesASeriesOfSoManyRuns() {
    laid();
    window.press(KeyEvent.VK_4);
    waitForAsked("series of 4");
  }

  @Test
  void whatCannotBeReadIsSaidAndNothingIsSent() {
    laid();
    window.press(KeyEvent.VK_H);
    window.waitForFocusOn("handRead.pairs.1.1");
    window.type("heavy");
    window.press(KeyEvent.VK_ENTER);
    window.type("1");
    window.press(KeyEvent.VK_ENTER);
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil(
        "the foot names the pair", () -> window.saidBy("foot").startsWith("pair 1, hung: heavy"));
    window.waitForFocusOn("handRead.pairs.1.1");
    assertThat(asked).containsExactly("lay 25-014");
  }
}
