package sagwright.screen.settings;

import java.util.List;
import sagwright.finish.ButtBore;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;

/**
 * All that can be set, as it stands. Immutable.
 *
 * @param ports those that are there, as people tell them apart
 * @param port the one that is listened to; empty for none
 * @param words the shop's scale from soft to stiff
 * @param guessesFirst whether the hand is asked before the bench
 * @param bore how a butt is bored for lead
 * @param workshop where the records lie
 * @param backup where a copy might be written
 */
public record SettingsView(
    List<String> ports,
    String port,
    Theme theme,
    ShopUnits units,
    double surenessPercent,
    List<String> words,
    String initials,
    boolean guessesFirst,
    ButtBore bore,
    String workshop,
    String backup) {
  public SettingsView {
    ports = List.copyOf(ports);
    words = List.copyOf(words);
  }
}
