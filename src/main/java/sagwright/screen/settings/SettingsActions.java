package sagwright.screen.settings;

import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;

/** What can be set. Called on the event thread; every call returns at once. */
public interface SettingsActions {
  /** The port that the bench head is on, as the view names it. */
  void listenTo(String port, Reply reply);

  /** Reads anew what is set, and looks for ports. */
  void look();

  /** The window has changed its theme already: keep it for the next start. */
  void wear(Theme theme, Reply reply);

  /** Units of the forms and lists, from the next start on. */
  void measureIn(ShopUnits units, Reply reply);

  /** How sure the shop wants to be, a chance in percent above 50 and below 100. */
  void beSure(double percent, Reply reply);

  /** Initials of whose hand is at work. */
  void signAs(String initials, Reply reply);

  /** Whether the hand is asked before the bench, from the next blank that is laid. */
  void guessFirst(boolean on, Reply reply);
}
