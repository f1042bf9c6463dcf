package sagwright.screen.settings;

import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;

/** What can be set. Called on the event thread; every call returns at once. */
public interface SettingsActions {
  /** The port that the bench head is on, as the view names it; empty for none. */
  void listenTo(String port);

  /** Looks for ports anew. */
  void lookForPorts();

  /** The window has changed its theme already: keep it for the next start. */
  void wear(Theme theme);

  void measureIn(ShopUnits units);

  /** How sure the shop wants to be, a chance in percent above 50 and below 100. */
  void beSure(double percent, Reply reply);

  /** The share of a species' bending strength that a test may use, in percent. */
  void loadSafely(double percent, Reply reply);

  /** Initials of whose hand is at work. */
  void signAs(String initials);

  /** A calibration file to be put in force from now on. */
  void calibrateBy(String file, Reply reply);
}
