package sagwright.screen.settings;

import java.util.List;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;

/**
 * All that can be set, as it stands. Immutable.
 *
 * @param ports those that are there, as people tell them apart
 * @param port the one that is listened to; empty for none
 * @param guessesFirst whether the hand is asked before the bench
 * @param workshop where the records lie
 */
public record SettingsView(
    List<String> ports,
    String port,
    Theme theme,
    ShopUnits units,
    double surenessPercent,
    String initials,
    boolean guessesFirst,
    String workshop) {
  public SettingsView {
    ports = List.copyOf(ports);
  }
}
