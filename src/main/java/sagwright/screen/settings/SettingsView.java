package sagwright.screen.settings;

import java.util.List;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;

/**
 * All that can be set, as it stands. Immutable.
 *
 * @param ports those that are there, as people tell them apart
 * @param port the one that is listened to; empty for none
 * @param line how the line stands, one line
 * @param calibration which is in force, one line
 * @param workshop where the records lie
 */
public record SettingsView(
    List<String> ports,
    String port,
    String line,
    Theme theme,
    ShopUnits units,
    double surenessPercent,
    double safeSharePercent,
    String initials,
    String calibration,
    String workshop) {
  public SettingsView {
    ports = List.copyOf(ports);
  }
}
