package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Color;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.finish.ButtBore;
import sagwright.grade.Sureness;
import sagwright.job.GradeAgain;
import sagwright.job.GuessFirst;
import sagwright.job.HeadPorts;
import sagwright.job.ShopSettings;
import sagwright.screen.rack.RackDesk;
import sagwright.screen.rack.RackScreen;
import sagwright.screen.rack.RackView;
import sagwright.screen.settings.SettingsDesk;
import sagwright.screen.settings.SettingsScreen;
import sagwright.screen.settings.SettingsView;
import sagwright.screen.settings.ShopLook;
import sagwright.screen.theme.Theme;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The settings on a real workshop, by keyboard alone. */
@CacioTest
@Tag("window")
class SettingsWindowTest {
  private static final String BLANK =
      "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\"25-014\",\"lengthMm\":1490,"
          + "\"massG\":405,\"stations\":[{\"xMm\":0,\"depthMm\":12.5,\"widthMm\":12.5},"
          + "{\"xMm\":1490,\"depthMm\":31,\"widthMm\":31}]}}";

  @TempDir Path folder;
  private final ExecutorService work = Executors.newSingleThreadExecutor();
  private Workshop workshop;
  private Shell shell;
  private WindowUnderTest window;

  @BeforeEach
  void open() throws Exception {
    workshop = WorkshopUnderTest.open(folder);
    workshop.blanks().enter(new SheetReader(SpeciesTable.published()).read(BLANK));
    window = WindowUnderTest.open(this::make);
    window.press(KeyEvent.VK_F9);
    window.waitForFocusOn("settings.port");
  }

  private Shell make() {
    ShopLook look = new ShopLook(Theme.LIGHT, ShopUnits.METRIC);
    Mailbox<SettingsView> mailbox = new Mailbox<>(SettingsDesk.atFirst(look));
    shell = new Shell();
    SettingsDesk desk =
        new SettingsDesk(
            workshop,
            new GradeAgain(workshop, SpeciesTable.published()),
            HeadPorts.only("the practice bench"),
            work,
            mailbox,
            units -> shell.makeAnew("Rack", () -> rack(units)));
    shell.add(rack(look.units()));
    shell.addAtFoot(new SettingsScreen(mailbox, desk));
    shell.open("Rack");
    return shell;
  }

  private Page rack(ShopUnits units) {
    Mailbox<RackView> mailbox = new Mailbox<>(RackDesk.atFirst(units));
    RackDesk desk =
        new RackDesk(
            workshop, SpeciesTable.published(), InstantSource.system(), work, mailbox, tag -> {});
    shell.whenOpened("Rack", desk::refresh);
    return new RackScreen(mailbox, desk);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
    WorkshopUnderTest.close(workshop, work);
  }

  private void waitForMassHead(String head) {
    window.waitUntil(
        "the rack's masses stand under " + head,
        () ->
            GuiActionRunner.execute(
                () ->
                    ShopExample.named(shell.openPage(), "rack.table") instanceof JTable table
                        && table.getColumnName(3).equals(head)));
  }

  private void chooseOunces() {
    window.tabTo("settings.masses in");
    window.press(KeyEvent.VK_DOWN);
    waitForFoot("Kept: units.");
  }

  private void waitForFoot(String begin) {
    window.waitUntil(
        "the foot says " + begin, () -> String.valueOf(window.saidBy("foot")).startsWith(begin));
  }

  private void goTo(int key, String word) {
    window.press(key);
    window.waitUntil(word + " is open", () -> window.openPage().equals(word));
  }

  private void typeOver(String text) {
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type(text);
  }

  @Test
  void howButtsAreBoredForLeadIsTypedInAndWhatCannotBeIsRefused() throws WorkshopException {
    window.tabTo("settings.butt bore");
    typeOver("12 0.5in");
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("butt bore: three lengths, as 10, 320, 12");
    typeOver("12, 5, 10");
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("a bore has a width");
    typeOver("12, 30cm, 0.5in");
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("Kept: butt bore.");
    assertThat(new ShopSettings(workshop).buttBore()).isEqualTo(new ButtBore(12, 300, 12.7));
  }

  @Test
  void theHandIsAskedFirstFromThenOn() throws WorkshopException {
    window.tabTo("settings.guess first");
    window.press(KeyEvent.VK_DOWN);
    waitForFoot("Kept: guess first.");
    assertThat(new GuessFirst(workshop).isOn()).isTrue();
    window.press(KeyEvent.VK_UP);
    window.waitUntil(
        "it is asked no more",
        () -> {
          try {
            return !new GuessFirst(workshop).isOn();
          } catch (WorkshopException e) {
            throw new AssertionError(e);
          }
        });
  }

  @Test
  void whatWasSetIsTakenBackByOneKeyTheLastFirst() throws WorkshopException {
    window.tabTo("settings.sure from");
    typeOver("90");
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("Kept: sure from.");
    window.tabTo("settings.colours");
    window.press(KeyEvent.VK_DOWN);
    waitForFoot("Kept: colours.");
    assertThat(paper()).isEqualTo(Theme.DARK.palette().paper());
    chooseOunces();

    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    waitForFoot("Taken back: units.");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    waitForFoot("Taken back: colours.");
    assertThat(paper()).isEqualTo(Theme.LIGHT.palette().paper());
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    waitForFoot("Taken back: sure from.");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    waitForFoot("Nothing to take back.");
    assertThat(new ShopSettings(workshop).sureness()).isEqualTo(Sureness.USUAL);
    assertThat(ShopLook.of(workshop.settings()))
        .isEqualTo(new ShopLook(Theme.LIGHT, ShopUnits.METRIC));
    goTo(KeyEvent.VK_F1, "Rack");
    waitForMassHead("mass, g");
  }

  private static Color paper() {
    return GuiActionRunner.execute(() -> Theme.style().palette().paper());
  }

  @Test
  void changedUnitsHoldAtOnce() {
    chooseOunces();
    goTo(KeyEvent.VK_F1, "Rack");
    waitForMassHead("mass, oz");
  }

  @Test
  void whatIsHalfTypedIsNotLostWhenTheUnitsChange() {
    goTo(KeyEvent.VK_F1, "Rack");
    window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    window.waitForFocusOn("blank.tag");
    window.type("26-001");
    goTo(KeyEvent.VK_F9, "Settings");
    chooseOunces();
    goTo(KeyEvent.VK_F1, "Rack");
    String tag =
        GuiActionRunner.execute(
            () -> ((JTextField) ShopExample.named(shell.openPage(), "blank.tag")).getText());
    assertThat(tag).isEqualTo("26-001");
    window.press(KeyEvent.VK_ESCAPE);
    goTo(KeyEvent.VK_F9, "Settings");
    goTo(KeyEvent.VK_F1, "Rack");
    waitForMassHead("mass, oz");
  }

  @Test
  void theWordsOfTheScaleAreTheShopsOwn() throws WorkshopException {
    window.tabTo("settings.words");
    typeOver("whippy, easy");
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("words: 5 of them, no two alike");
    typeOver("whippy, easy, middling, brisk, stiff");
    window.press(KeyEvent.VK_TAB); // nothing that was typed is lost without Enter
    waitForFoot("Kept: words.");
    assertThat(new ShopSettings(workshop).wordScale().words())
        .isEqualTo(List.of("whippy", "easy", "middling", "brisk", "stiff"));
  }

  @Test
  void aWholeCopyIsWrittenBesideTheWorkshopByOneKey() throws WorkshopException {
    Path copy =
        folder.resolve(LocalDate.now(ZoneId.systemDefault()) + "-workshop.db"); // or the day after
    window.tabTo("settings.back up to");
    typeOver(copy.toString());
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("The copy is whole: " + copy);
    assertThat(Files.exists(copy)).isTrue();
    try (Workshop opened = Workshop.open(copy, new Keeper(InstantSource.system(), "test"))) {
      opened.requireWhole();
    }
    window.press(KeyEvent.VK_ENTER);
    waitForFoot("the file " + copy + " is there already");
  }
}
