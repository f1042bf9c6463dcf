package sagwright.screen;

import java.awt.event.KeyEvent;
import org.assertj.swing.core.Robot;

/** The keys of a window under test. */
public final class Keyboard {
  private final Robot robot;

  public Keyboard(Robot robot) {
    this.robot = robot;
    robot.settings().delayBetweenEvents(5);
    robot.settings().eventPostingDelay(20);
  }

  /** Presses and lets go one key, with its modifiers. */
  public void press(int keyCode, int... modifiers) {
    for (int modifier : modifiers) {
      robot.pressKey(modifier);
    }
    robot.pressAndReleaseKey(keyCode);
    for (int modifier : modifiers) {
      robot.releaseKey(modifier);
    }
  }

  void hold(int keyCode) {
    robot.pressKey(keyCode);
  }

  void letGo(int keyCode) {
    robot.releaseKey(keyCode);
  }

  public void type(String text) {
    robot.enterText(text);
  }

  /** Types a text and Enter. */
  public void line(String text) {
    type(text);
    press(KeyEvent.VK_ENTER);
  }
}
