package sagwright.screen;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.job.ChoosingShop;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.choose.ChooseDesk;
import sagwright.screen.choose.ChooseScreen;
import sagwright.screen.choose.ChooseView;
import sagwright.screen.choose.ChooseWorkshop;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;

/** The Choose screen over a real workshop file, with its work thread, by keyboard alone. */
@CacioTest
@Tag("window")
class ChooseWindowTest {
  private final ExecutorService work = Executors.newSingleThreadExecutor();
  private Workshop workshop;
  private WindowUnderTest window;

  @BeforeEach
  void open(@TempDir Path folder) throws Exception {
    workshop = ChooseWorkshop.create(folder);
    window = WindowUnderTest.open(this::shell);
    window.press(KeyEvent.VK_F2);
    window.waitForFocusOn("choose.rows");
  }

  private Shell shell() {
    Mailbox<ChooseView> mailbox = new Mailbox<>(ChooseView.reading(ShopUnits.METRIC));
    ChoosingShop shop = new ChoosingShop(workshop, SpeciesTable.published());
    Shell shell = new Shell();
    shell.add(new BenchScreen(new Mailbox<>(BenchExample.empty()), new ShopExample.IdleBench()));
    shell.add(new ChooseScreen(mailbox, new ChooseDesk(shop, work, mailbox)));
    shell.open("Bench");
    return shell;
  }

  @AfterEach
  void close() throws Exception {
    window.close();
    work.shutdown();
    work.awaitTermination(10, TimeUnit.SECONDS);
    workshop.close();
  }

  private void waitForRow(String says) {
    window.waitUntil("a row says " + says, () -> window.saidBy("choose.rows").contains(says));
  }

  private void waitForFoot(String says) {
    window.waitUntil("the foot says " + says, () -> window.saidBy("foot").contains(says));
  }

  @Test
  void aBlankIsChosenPromisedAndTakenBackByKeyboardAlone() {
    waitForRow("1 of 2: 25-002, pick 1");
    waitForFoot("25-002 lies deepest in the ask.");
    waitForFoot("A promise costs the other open order");
    window.press(KeyEvent.VK_2);
    waitForRow("2 of 2: 25-001, pick 1");
    waitForFoot("25-001");
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("25-001 is promised to R-0007.");
    window.waitUntil(
        "it is on the record",
        () ->
            ChooseWorkshop.promised(workshop, ChooseWorkshop.ORDER).equals(Optional.of("25-001")));
    window.press(KeyEvent.VK_PAGE_DOWN);
    waitForRow("1 of 1: 25-002");
    window.press(KeyEvent.VK_DOWN);
    waitForRow("25-001 cannot serve: promised to R-0007.");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    waitForFoot("25-001 is free again.");
    window.waitUntil(
        "it is off the record",
        () -> ChooseWorkshop.promised(workshop, ChooseWorkshop.ORDER).isEmpty());
  }

  @Test
  void anOrderIsOpenedByItsNumberAndDigitsInTheFieldPickNothing() {
    waitForRow("1 of 2: 25-002, pick 1");
    window.press(KeyEvent.VK_O);
    window.waitForFocusOn("choose.order");
    window.type("r-0008");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("choose.rows");
    waitForRow("R-0008, 1 of 2: 25-002, pick 1");
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("25-002 is promised to R-0008.");
    window.press(KeyEvent.VK_U);
    waitForFoot("25-002 is free again.");
  }
}
