package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.job.ImportDocuments;
import sagwright.job.InventedBlanks;
import sagwright.job.InventedBlanks.Spec;
import sagwright.screen.rack.RackDesk;
import sagwright.screen.rack.RackScreen;
import sagwright.screen.rack.RackView;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;

/** The rack over a real workshop, by keyboard alone. */
@CacioTest
@Tag("window")
class RackWindowTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();

  @TempDir Path folder;
  private final ExecutorService work = Executors.newSingleThreadExecutor();
  private final List<String> laid = new CopyOnWriteArrayList<>();
  private Workshop workshop;
  private WindowUnderTest window;

  @BeforeEach
  void open() throws Exception {
    workshop = WorkshopUnderTest.open(folder);
    for (String tag : List.of("25-001", "25-002", "25-003")) {
      new ImportDocuments(workshop, SPECIES)
          .bring(InventedBlanks.sheet(Spec.ash(tag, 12_000)), true);
    }
    workshop.blanks().end(workshop.blanks().require("25-002"), "split at the butt");
    Mailbox<RackView> mailbox = new Mailbox<>(RackDesk.atFirst(ShopUnits.METRIC));
    RackDesk desk =
        new RackDesk(workshop, SPECIES, InstantSource.system(), work, mailbox, laid::add);
    desk.refresh();
    window = WindowUnderTest.openPage(() -> new RackScreen(mailbox, desk));
    window.waitForFocusOn("rack.filter");
    waitForTags("25-003", "25-001");
  }

  @AfterEach
  void close() throws Exception {
    window.close();
    WorkshopUnderTest.close(workshop, work);
  }

  private void waitForTags(String... tags) {
    window.waitUntil(
        "the list has " + List.of(tags),
        () -> window.firstColumnOf("rack.table").equals(List.of(tags)));
  }

  @Test
  void whatIsNoMoreIsFoundByAWordOfTheFilterAndItsRecordIsToBeRead() {
    window.type("ended butt");
    waitForTags("25-002");
    window.waitUntil(
        "the foot says why",
        () -> window.saidBy("foot").startsWith("25-002 is no more: split at the butt."));
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Rack.control");
    window.waitUntil(
        "it is said that it is no more",
        () -> window.saidBy("foot").startsWith("It is no more: split at the butt."));
    assertThat(window.saidBy("timeline")).contains("ended split at the butt", "tested");
    window.press(KeyEvent.VK_M); // nothing is measured of it any more
    window.press(KeyEvent.VK_ENTER); // nor is it laid on the bench: back to the list
    window.waitForFocusOn("rack.filter");
    window.press(KeyEvent.VK_ESCAPE);
    waitForTags("25-003", "25-001");
    assertThat(laid).isEmpty();
  }

  @Test
  void theMarkStaysOnTheBlankThatWasLookedAt() {
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Rack.control");
    window.press(KeyEvent.VK_ESCAPE);
    window.waitForFocusOn("rack.filter");
    assertThat(window.markedIn("rack.table")).isEqualTo("25-001");
  }

  @Test
  void aLongRecordIsReadToItsEndByKeyboard() throws Exception {
    for (int i = 0; i < 30; i++) {
      workshop.notes().add(workshop.blanks().require("25-003"), "turned to look at it, " + i);
    }
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("Rack.control");
    pressUntil(KeyEvent.VK_PAGE_DOWN, 600, 10_000);
    pressUntil(KeyEvent.VK_UP, 0, 0);
    pressUntil(KeyEvent.VK_DOWN, 1, 600);
  }

  private void pressUntil(int keyCode, int leastPx, int mostPx) {
    window.waitUntil(
        "the record is moved to " + leastPx + " … " + mostPx,
        () -> {
          window.press(keyCode);
          int at = window.scrolledDown("record.scroll");
          return at >= leastPx && at <= mostPx;
        });
  }
}
