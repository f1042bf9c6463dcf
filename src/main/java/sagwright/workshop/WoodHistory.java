package sagwright.workshop;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sagwright.wood.Seasoning;

/** When a blank came, was turned and was weighed. */
public final class WoodHistory {
  /** A smaller loss of volume is the calipers', not the plane's. Ours, no source. */
  private static final double TURNED_SHARE = 0.01;

  private Instant turnedAt;
  private boolean wasTurned;
  private ShortShaft newest;
  private final List<Seasoning.Weighing> weighings = new ArrayList<>();

  WoodHistory(Instant cameAt) {
    turnedAt = cameAt;
  }

  /** The next caliper entry. */
  void add(Instant at, ShortShaft next) {
    if (newest != null
        && next.taper().volumeMm3() < newest.taper().volumeMm3() * (1 - TURNED_SHARE)) {
      turned(at);
    }
    if (next.massG() != null && isWeighing(next)) {
      weighings.add(new Seasoning.Weighing(at, next.massG()));
    }
    newest = next;
  }

  /**
   * Every entry carries a mass; one that says another thing anew and the old mass to the last digit
   * has only carried it on.
   */
  private boolean isWeighing(ShortShaft next) {
    return newest == null
        || !next.massG().equals(newest.massG())
        || (Objects.equals(next.bowMm(), newest.bowMm())
            && next.taper().stations().equals(newest.taper().stations()));
  }

  /** Wood was taken off, said by a newer stage or shown by the calipers. */
  void turned(Instant at) {
    if (at.isAfter(turnedAt)) {
      turnedAt = at;
      wasTurned = true;
    }
  }

  /** How it has seasoned since. */
  public Seasoning seasoning(Instant now) {
    List<Seasoning.Weighing> since =
        weighings.stream().filter(weighing -> !weighing.at().isBefore(turnedAt)).toList();
    return Seasoning.of(new Seasoning.LastTurning(turnedAt, wasTurned), since, now);
  }
}
