package sagwright.job;

import java.time.Instant;
import java.util.Map;
import sagwright.sheet.SheetReader;
import sagwright.wood.Grain;
import sagwright.wood.Seasoning;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.WoodHistory;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What the eye and the scales say of the wood of all blanks, read at once. */
public final class WoodRecords {
  private final Map<Long, Grain> grains;
  private final Map<Long, WoodHistory> histories;
  private final Instant now;

  private WoodRecords(Map<Long, Grain> grains, Map<Long, WoodHistory> histories, Instant now) {
    this.grains = grains;
    this.histories = histories;
    this.now = now;
  }

  public static WoodRecords of(Workshop workshop, SpeciesTable species, Instant now)
      throws WorkshopException {
    return new WoodRecords(
        workshop.grains().allNow(), workshop.woodHistories(new SheetReader(species)).all(), now);
  }

  /** {@link Grain#UNSEEN} where nobody has looked. */
  public Grain grain(Blank blank) {
    return grains.getOrDefault(blank.id(), Grain.UNSEEN);
  }

  public Seasoning seasoning(Blank blank) {
    return histories.get(blank.id()).seasoning(now);
  }
}
