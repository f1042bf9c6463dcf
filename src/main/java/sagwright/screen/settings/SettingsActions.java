package sagwright.screen.settings;

import java.util.List;
import java.util.function.Consumer;
import sagwright.finish.ButtBore;
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

  /**
   * Units of the forms and lists from now on; a page with something half typed waits for its end.
   */
  void measureIn(ShopUnits units, Reply reply);

  /** How sure the shop wants to be, a chance in percent above 50 and below 100. */
  void beSure(double percent, Reply reply);

  /** The words of the scale from soft to stiff, as many as there are ranges. */
  void call(List<String> words, Reply reply);

  /** Writes a whole copy of the workshop to a new file and looks it through. */
  void backUpTo(String file, Reply reply);

  /** Initials of whose hand is at work. */
  void signAs(String initials, Reply reply);

  /** Whether the hand is asked before the bench, from the next blank that is laid. */
  void guessFirst(boolean on, Reply reply);

  /**
   * Sets what was set last to what it was before, and puts the settings as they are then.
   *
   * @param say hears one line for people, on the event thread, once that is done
   */
  void takeBack(Consumer<String> say);

  /** How far butts are bored for lead from now on. */
  void boreButts(ButtBore bore, Reply reply);
}
