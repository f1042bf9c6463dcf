package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sagwright.screen.start.StartActions;
import sagwright.screen.start.StartScreen;

/** What is begun with, by one key each. */
@CacioTest
@Tag("window")
class StartWindowTest {
  private static final Path USUAL = Path.of("/home/maker/Sagwright/workshop.db");

  private final List<String> asked = Collections.synchronizedList(new ArrayList<>());
  private volatile Reply example;
  private WindowUnderTest window;

  private final class Scripted implements StartActions {
    @Override
    public void openWorkshop(Path file, Reply reply) {
      asked.add("open " + file);
    }

    @Override
    public void practise(Reply reply) {
      asked.add("practise");
    }

    @Override
    public void openExample(Consumer<String> progress, Reply reply) {
      asked.add("example");
      example = reply;
      progress.accept("Making the example workshop: 40 %.");
    }
  }

  @BeforeEach
  void open() {
    window =
        WindowUnderTest.open(
            () -> {
              Shell shell = new Shell();
              shell.add(new StartScreen(USUAL, new Scripted()));
              shell.open("Start");
              return shell;
            });
    window.waitForFocusOn("start.file");
  }

  @AfterEach
  void close() {
    window.close();
  }

  private void waitForFoot(String begin) {
    window.waitUntil("the foot says " + begin, () -> window.saidBy("foot").startsWith(begin));
  }

  @Test
  void eachBeginningHasAKey() {
    window.press(KeyEvent.VK_F5);
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil("both were asked for", () -> asked.size() == 2);
    assertThat(asked).containsExactly("practise", "open " + USUAL);
  }

  @Test
  void theExampleSaysHowFarItIsAndWhyItIsNot() {
    window.press(KeyEvent.VK_F6);
    waitForFoot("Making the example workshop: 40 %.");
    assertThat(asked).containsExactly("example");
    example.refused("the disk is full");
    waitForFoot("the disk is full");
  }
}
