package sagwright.screen.settings;

import java.util.Arrays;
import java.util.Optional;
import sagwright.quantity.Unit;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;
import sagwright.workshop.Settings;
import sagwright.workshop.WorkshopException;

/** How a workshop wants its window: colours and units. What was never set is light and metric. */
public record ShopLook(Theme theme, ShopUnits units) {
  static final String COLOURS = "colours";
  static final String LENGTHS = "lengths in";
  static final String MASSES = "masses in";

  public static ShopLook of(Settings settings) throws WorkshopException {
    Optional<String> colours = settings.get(COLOURS);
    Theme theme =
        Arrays.stream(Theme.values())
            .filter(t -> colours.isPresent() && t.name().equals(colours.get()))
            .findFirst()
            .orElse(Theme.LIGHT);
    ShopUnits units =
        new ShopUnits(
            unit(settings.get(LENGTHS), ShopUnits.METRIC.length()),
            unit(settings.get(MASSES), ShopUnits.METRIC.mass()));
    return new ShopLook(theme, units);
  }

  private static Unit unit(Optional<String> set, Unit otherwise) {
    return Arrays.stream(Unit.values())
        .filter(u -> u.dimension() == otherwise.dimension())
        .filter(u -> set.isPresent() && u.name().equals(set.get()))
        .findFirst()
        .orElse(otherwise);
  }
}
