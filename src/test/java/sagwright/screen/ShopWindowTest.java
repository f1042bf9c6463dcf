package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sagwright.beam.Station;
import sagwright.grade.Order;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.orders.OrdersScreen;
import sagwright.screen.rack.BlankEntry;
import sagwright.screen.rack.RackScreen;

@CacioTest
@Tag("window")
class ShopWindowTest {
  private final List<BlankEntry> entered = new CopyOnWriteArrayList<>();
  private final List<Order> taken = new CopyOnWriteArrayList<>();
  private final List<String> laid = new CopyOnWriteArrayList<>();
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
              public void lay(String tag) {
                laid.add(tag);
              }
            }));
    shell.add(
        new OrdersScreen(
            new Mailbox<>(ShopExample.orders()),
            new ShopExample.IdleOrders() {
              @Override
              public void take(Order order, Reply reply) {
                taken.add(order);
                reply.done();
              }
            }));
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
    window.waitUntil(
        "the refusal is said", () -> window.saidBy("foot").startsWith("25-015 is there already"));
  }

  @Test
  void anOrderIsTakenInTwentyFiveKeystrokes() {
    goTo(KeyEvent.VK_F3, "Orders");
    String[] fields = {"58in", "9.5", "29", "2.1"};
    int keystrokes = 1; // Ctrl N
    window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    window.waitForFocusOn("order.length");
    for (int i = 0; i < 3; i++) {
      window.type(fields[i]);
      window.press(KeyEvent.VK_ENTER);
      keystrokes += fields[i].length() + 1;
    }
    window.type(fields[3]);
    window.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    keystrokes += fields[3].length() + 1;
    window.waitUntil("the order is sent", () -> !taken.isEmpty());
    assertThat(keystrokes).isLessThanOrEqualTo(25);
    Order order = taken.get(0);
    assertThat(order.number()).isEqualTo("R-0008");
    assertThat(order.ask().stiffnessNPerMm()).isEqualTo(2.1);
    assertThat(order.finish().taper().stations())
        .containsExactly(Station.round(0, 9.5), Station.round(1473.2, 29));
  }
}
