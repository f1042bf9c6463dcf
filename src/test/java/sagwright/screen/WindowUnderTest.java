package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import sagwright.screen.theme.Theme;

/** A real window, painted into memory, worked by its keys alone. */
final class WindowUnderTest implements AutoCloseable {
  private static final int MOST_TABS = 20;
  private static final Duration DEADLINE = Duration.ofSeconds(30);

  private static final Set<Integer> MODIFIERS =
      Set.of(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_ALT, KeyEvent.VK_ALT_GRAPH);

  private final AtomicInteger keystrokes = new AtomicInteger();
  private final AWTEventListener counter = this::count;
  private final FrameFixture frame;
  private final Shell shell;
  private final Keyboard keyboard;

  private WindowUnderTest(FrameFixture frame, Shell shell, Keyboard keyboard) {
    this.frame = frame;
    this.shell = shell;
    this.keyboard = keyboard;
  }

  /**
   * @param make makes the shell, on the event thread, with the page open that the test begins on
   */
  static WindowUnderTest open(Supplier<Shell> make) {
    FailOnThreadViolationRepaintManager.install();
    Shell[] shell = new Shell[1];
    MainWindow window =
        GuiActionRunner.execute(
            () -> {
              Theme.LIGHT.install();
              shell[0] = make.get();
              return new MainWindow("Sagwright", shell[0], () -> {});
            });
    FrameFixture frame = new FrameFixture(window);
    Keyboard keyboard = new Keyboard(frame.robot());
    frame.show();
    return new WindowUnderTest(frame, shell[0], keyboard);
  }

  /** The same with one page alone. */
  static WindowUnderTest openPage(Supplier<Page> make) {
    return open(
        () -> {
          Page page = make.get();
          Shell shell = new Shell();
          shell.add(page);
          shell.open(page.word());
          return shell;
        });
  }

  /** Presses and lets go one key, with its modifiers. */
  void press(int keyCode, int... modifiers) {
    keyboard.press(keyCode, modifiers);
  }

  void hold(int keyCode) {
    keyboard.hold(keyCode);
  }

  void letGo(int keyCode) {
    keyboard.letGo(keyCode);
  }

  /** Counts every key that goes down from now on, a key with its modifiers as one. */
  void countKeystrokes() {
    keystrokes.set(0);
    Toolkit.getDefaultToolkit().addAWTEventListener(counter, AWTEvent.KEY_EVENT_MASK);
  }

  int keystrokes() {
    return keystrokes.get();
  }

  private void count(AWTEvent event) {
    if (event instanceof KeyEvent key
        && key.getID() == KeyEvent.KEY_PRESSED
        && !MODIFIERS.contains(key.getKeyCode())) {
      keystrokes.incrementAndGet();
    }
  }

  void type(String text) {
    keyboard.type(text);
  }

  String openPage() {
    return GuiActionRunner.execute(() -> shell.openPage().word());
  }

  /** What a part of the window says of itself to whoever does not see it. */
  String saidBy(String name) {
    return GuiActionRunner.execute(
        () -> named(name).getAccessibleContext().getAccessibleDescription());
  }

  boolean isSeen(String name) {
    return GuiActionRunner.execute(() -> named(name).isShowing());
  }

  /** How far a part is scrolled down, in pixels. */
  int scrolledDown(String name) {
    return GuiActionRunner.execute(
        () -> ((JScrollPane) named(name)).getVerticalScrollBar().getValue());
  }

  /** What stands in a field. */
  String textOf(String name) {
    return GuiActionRunner.execute(() -> ((JTextComponent) named(name)).getText());
  }

  /** What stands in the first column of a table, from its top. */
  List<String> firstColumnOf(String name) {
    return GuiActionRunner.execute(
        () -> {
          JTable table = (JTable) named(name);
          return IntStream.range(0, table.getRowCount())
              .mapToObj(row -> String.valueOf(table.getValueAt(row, 0)))
              .toList();
        });
  }

  /** What stands in the first column of the row that is marked. */
  String markedIn(String name) {
    return GuiActionRunner.execute(
        () -> {
          JTable table = (JTable) named(name);
          int row = table.getSelectedRow();
          return row < 0 ? "" : String.valueOf(table.getValueAt(row, 0));
        });
  }

  private Component named(String name) {
    Component found = ShopExample.named(shell.openPage(), name);
    assertThat(found).as("a part called %s", name).isNotNull();
    return found;
  }

  void waitForFocusOn(String name) {
    waitUntil(
        name + " has the focus", () -> GuiActionRunner.execute(() -> named(name).isFocusOwner()));
  }

  /** Waits until a field has the focus and all of its text is picked, to be typed over. */
  void waitForPicked(String name) {
    waitUntil(
        name + " is to be typed over",
        () ->
            GuiActionRunner.execute(
                () -> {
                  JTextComponent field = (JTextComponent) named(name);
                  String text = field.getText();
                  return field.isFocusOwner() && text.equals(field.getSelectedText());
                }));
  }

  /** Presses Tab until a part has the focus, each once the one before has led on. */
  void tabTo(String name) {
    for (int i = 0; i < MOST_TABS; i++) {
      waitUntil("something has the focus", () -> focusOwner() != null);
      if (GuiActionRunner.execute(() -> named(name).isFocusOwner())) {
        return;
      }
      Component before = focusOwner();
      press(KeyEvent.VK_TAB);
      waitUntil(
          "Tab leads on",
          () -> {
            Component now = focusOwner();
            return now != null && !now.equals(before);
          });
    }
    throw new AssertionError("Tab does not lead to " + name);
  }

  private static Component focusOwner() {
    return GuiActionRunner.execute(
        () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
  }

  void waitUntil(String what, BooleanSupplier holds) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (!holds.getAsBoolean()) {
      assertThat(System.nanoTime()).as("waited in vain until " + what).isLessThan(end);
      frame.robot().waitForIdle();
      Thread.onSpinWait();
    }
  }

  @Override
  public void close() {
    Toolkit.getDefaultToolkit().removeAWTEventListener(counter);
    frame.cleanUp();
  }
}
