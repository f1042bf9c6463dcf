package sagwright.screen;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
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
    workshop.notes().add(workshop.blanks().require("25-002"), "rings like a bell");
    window = WindowUnderTest.open(this::shell);
    window.press(KeyEvent.VK_F2);
    window.waitForFocusOn("choose.rows");
  }

  private Shell shell() {
    Mailbox<ChooseView> mailbox = new Mailbox<>(ChooseView.reading(ShopUnits.METRIC));
    ChoosingShop shop =
        new ChoosingShop(workshop, SpeciesTable.published(), InstantSource.system());
    Shell shell = new Shell();
    shell.add(new BenchScreen(new Mailbox<>(BenchExample.empty()), new ShopExample.IdleBench()));
    shell.add(new ChooseScreen(mailbox, new ChooseDesk(shop, work, mailbox)));
    shell.open("Bench");
    return shell;
  }

  @AfterEach
  void close() throws Exception {
    window.close();
    WorkshopUnderTest.close(workshop, work);
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
    waitForFoot("Taken back: promised 25-001 to R-0007.");
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

  @Test
  void picksAreLookedAtCloselyAndWhatRanksIsSetByKeyboardAlone() {
    waitForRow("1 of 2: 25-002, pick 1");
    window.press(KeyEvent.VK_C);
    window.waitUntil(
        "its note is seen", () -> window.saidBy("closely.columns").contains("noted: ") && rings());
    window.waitForFocusOn("closely.columns"); // and not on the rail
    window.press(KeyEvent.VK_ESCAPE);
    window.waitForFocusOn("choose.rows");
    window.press(KeyEvent.VK_W);
    window.waitForFocusOn("choose.weights.1");
    window.type("3");
    window.press(KeyEvent.VK_ENTER);
    window.type("0");
    window.press(KeyEvent.VK_ENTER);
    window.type("0");
    window.press(KeyEvent.VK_ENTER);
    window.type("1");
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil(
        "it is kept",
        () -> ChooseWorkshop.weights(workshop).inWords().equals("stiffness 75 %, spare 25 %"));
    window.waitForFocusOn("choose.rows");
  }

  private boolean rings() {
    return window.saidBy("closely.columns").contains("rings like a bell");
  }

  @Test
  void allOrdersAreSeenAtOnceAndOneIsOpenedByKeyboardAlone() {
    waitForRow("1 of 2: 25-002, pick 1");
    window.press(KeyEvent.VK_A);
    window.waitForFocusOn("choose.all.table");
    window.waitUntil(
        "both are paired", () -> window.saidBy("choose.all.sums").startsWith("Of 2 open orders "));
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("choose.rows");
    waitForRow("R-0008, 1 of 2");
  }
}
