package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sagwright.job.KeepSplice;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.orders.OrdersScreen;
import sagwright.screen.rack.BlankEntry;
import sagwright.screen.rack.RackScreen;
import sagwright.wood.Grain;

@CacioTest
@Tag("window")
class ShopWindowTest {
  private final List<BlankEntry> entered = new CopyOnWriteArrayList<>();
  private final List<String> laid = new CopyOnWriteArrayList<>();
  private final List<BlankEntry> measured = new CopyOnWriteArrayList<>();
  private final List<KeepSplice.Measured> spliced = new CopyOnWriteArrayList<>();
  private final List<String> notes = new CopyOnWriteArrayList<>();
  private final List<String> opened = new CopyOnWriteArrayList<>();
  private final AtomicInteger undone = new AtomicInteger();
  private WindowUnderTest window;

  @BeforeEach
  void open() {
    window = WindowUnderTest.open(this::shell);
  }

  private Shell shell() {
    Shell shell = new Shell();
    shell.add(new BenchScreen(new Mailbox<>(BenchExample.ready()), new ShopExample.IdleBench()));
    shell.add(
        new RackScreen(
            new Mailbox<>(ShopExample.rack()),
            new ShopExample.IdleRack() {
              @Override
              public void enter(BlankEntry blank, Reply reply) {
                entered.add(blank);
                reply.refused(blank.tag() + " is there already");
              }

              @Override
              public void measure(BlankEntry blank, Reply reply) {
                measured.add(blank);
                reply.done();
              }

              @Override
              public void note(String tag, String words, Reply reply) {
                notes.add(tag + ": " + words);
                reply.done();
              }

              @Override
              public void undo(Reply reply) {
                undone.incrementAndGet();
                reply.done();
              }

              @Override
              public void open(String tag) {
                opened.add(tag);
              }

              @Override
              public void splice(String tag, KeepSplice.Measured splice, Reply reply) {
                spliced.add(splice);
                reply.done();
              }

              @Override
              public void lay(String tag) {
                laid.add(tag);
              }
            }));
    shell.add(new OrdersScreen(new Mailbox<>(OrdersExample.orders()), new OrdersExample.Idle()));
    shell.open("Bench");
    return shell;
  }

  @AfterEach
  void close() {
    window.close();
  }

  private void goTo(int functionKey, String word) {
    window.press(functionKey);
    window.waitUntil(word + " is open", () -> window.openPage().equals(word));
  }

  @Test
  void functionKeysOpenThePagesEvenFromATable() {
    goTo(KeyEvent.VK_F3, "Orders");
    window.waitForFocusOn("orders.table");
    goTo(KeyEvent.VK_F2, "Rack");
    window.waitForFocusOn("rack.filter");
    goTo(KeyEvent.VK_F1, "Bench");
  }

  @Test
  void theListFiltersAsIsTypedAndEnterLeadsToTheBench() {
    goTo(KeyEvent.VK_F2, "Rack");
    window.waitForFocusOn("rack.filter");
    window.type("near 25-014");
    window.press(KeyEvent.VK_ESCAPE);
    window.type("25-014");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Rack.control");
    assertThat(window.saidBy("timeline")).contains("tested 3.212");
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil("the blank is laid", () -> laid.contains("25-014"));
  }

  @Test
  void aBlankIsWrittenDownByKeyboardAloneAndARefusalIsSaid() {
    goTo(KeyEvent.VK_F2, "Rack");
    window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    window.waitForFocusOn("blank.tag");
    window.type("25-015");
    window.press(KeyEvent.VK_ENTER);
    window.press(KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_TAB);
    window.waitForFocusOn("blank.length");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("blank.mass");
    window.type("13 oz");
    window.press(KeyEvent.VK_ENTER);
    window.type("11.4");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("blank.grain lines");
    window.type("9");
    window.press(KeyEvent.VK_ENTER);
    window.tabTo("blank.looks");
    window.type("a small knot");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("blank.pitch");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("stations.1.1");
    for (String figure : List.of("0", "12.1", "", "1490", "29,6", "29.5")) {
      window.type(figure);
      window.press(KeyEvent.VK_ENTER);
    }
    window.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    window.waitUntil("the blank is sent", () -> !entered.isEmpty());
    BlankEntry entry = entered.get(0);
    assertThat(entry.tag()).isEqualTo("25-015");
    assertThat(entry.massG()).isEqualTo(13 * 28.349523125); // international avoirdupois ounce
    assertThat(entry.stations())
        .containsExactly(
            new BlankEntry.Calipers(0, 12.1, null), new BlankEntry.Calipers(1490, 29.6, 29.5));
    assertThat(entry.grain()).isEqualTo(new Grain(9.0, null, "a small knot"));
    window.waitUntil(
        "the refusal is said", () -> window.saidBy("foot").startsWith("25-015 is there already"));
  }

  @Test
  void aCaliperThatTypesLikeAKeyboardFillsStationsAtAPitchAndAMisreadingIsQuestioned() {
    goTo(KeyEvent.VK_F2, "Rack");
    window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    window.waitForFocusOn("blank.tag");
    window.type("25-016");
    window.tabTo("blank.length");
    window.type("700");
    window.tabTo("blank.pitch");
    window.type("100");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("stations.1.2");
    // as calipers send them: a comma, a unit, a sign, three decimals; the fifth one misread by 3
    for (String sent : List.of("12.00", "14,02", "16.00mm", "+17.99", "23,010", "22.0 mm", "24")) {
      window.type(sent);
      window.press(KeyEvent.VK_ENTER);
    }
    window.type("26.01");
    window.waitUntil(
        "the misreading is questioned",
        () -> window.saidBy("foot").startsWith("Misread? depth 23.01 at 400 mm lies 3.0"));
    window.press(KeyEvent.VK_ENTER); // behind the last station: it is to be kept
    window.waitUntil(
        "it is asked whether to keep it",
        () -> window.saidBy("foot").contains("Ctrl Enter again keeps it"));
    assertThat(entered).isEmpty();
    window.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    window.waitUntil("the blank is sent", () -> !entered.isEmpty());
    assertThat(entered.get(0).stations())
        .containsExactly(
            new BlankEntry.Calipers(0, 12, null),
            new BlankEntry.Calipers(100, 14.02, null),
            new BlankEntry.Calipers(200, 16, null),
            new BlankEntry.Calipers(300, 17.99, null),
            new BlankEntry.Calipers(400, 23.01, null),
            new BlankEntry.Calipers(500, 22, null),
            new BlankEntry.Calipers(600, 24, null),
            new BlankEntry.Calipers(700, 26.01, null));
  }

  @Test
  void aRecordIsWeighedAndNotedAndTheLastActionTakenBackByKeyboardAlone() {
    goTo(KeyEvent.VK_F2, "Rack");
    window.waitForFocusOn("rack.filter");
    window.type("25-014");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Rack.control");
    window.press(KeyEvent.VK_W);
    window.waitForFocusOn("rack.weigh.1");
    window.type("354.2");
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil("it is weighed", () -> !measured.isEmpty());
    assertThat(measured.get(0).massG()).isEqualTo(354.2);
    assertThat(measured.get(0).why()).isEqualTo("weighed");
    window.waitForFocusOn("Rack.control");
    window.press(KeyEvent.VK_A);
    window.waitForFocusOn("rack.note.1");
    window.type("rings like a bell");
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil("it is noted", () -> notes.contains("25-014: rings like a bell"));
    window.waitForFocusOn("Rack.control");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.waitUntil("it is taken back", () -> undone.get() == 1);
  }

  @Test
  void aSpliceIsSaidByAWoodOfTheTableOrByItsFigures() {
    goTo(KeyEvent.VK_F2, "Rack");
    window.waitForFocusOn("rack.filter");
    window.type("25-014");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Rack.control");
    for (String wood : List.of("ebony African", "1120 15500")) {
      window.press(KeyEvent.VK_P);
      window.waitForFocusOn("rack.splice.1");
      for (String text : List.of("18 in", "4", wood)) {
        window.type(text);
        window.press(KeyEvent.VK_ENTER);
      }
      window.waitForFocusOn("Rack.control");
    }
    assertThat(spliced)
        .containsExactly(
            new KeepSplice.Measured(457.2, 4, "ebony African", null, null),
            new KeepSplice.Measured(457.2, 4, null, 1120.0, 15_500.0));
  }

  @Test
  void theListIsSortedByAnythingByKeyboardAlone() {
    goTo(KeyEvent.VK_F2, "Rack");
    window.waitForFocusOn("rack.filter");
    for (int i = 0; i < 5; i++) {
      window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL); // to the stiffness, the fifth column
    }
    window.press(KeyEvent.VK_R, KeyEvent.VK_CONTROL);
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil("the stiffest is opened", () -> opened.contains("25-010"));
  }
}
