package sagwright.job;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import sagwright.sheet.SheetReader;
import sagwright.wood.Grain;
import sagwright.wood.Seasoning;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * What the eye and the scales say of the wood of all blanks, read at once.
 *
 * @param grains by the numbers of the blanks that somebody has looked at
 * @param seasonings by the numbers of all blanks
 */
public record WoodRecords(Map<Long, Grain> grains, Map<Long, Seasoning> seasonings) {
  public WoodRecords {
    grains = Map.copyOf(grains);
    seasonings = Map.copyOf(seasonings);
  }

  public static WoodRecords of(Workshop workshop, SpeciesTable species, Instant now)
      throws WorkshopException {
    Map<Long, Seasoning> seasonings = new HashMap<>();
    workshop
        .woodHistories(new SheetReader(species))
        .all()
        .forEach((blank, history) -> seasonings.put(blank, history.seasoning(now)));
    return new WoodRecords(workshop.grains().allNow(), seasonings);
  }

  /** {@link Grain#UNSEEN} where nobody has looked. */
  public Grain grain(Blank blank) {
    return grains.getOrDefault(blank.id(), Grain.UNSEEN);
  }

  public Seasoning seasoning(Blank blank) {
    return seasonings.get(blank.id());
  }
}
