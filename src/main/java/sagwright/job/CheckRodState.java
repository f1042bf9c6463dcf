package sagwright.job;

import java.time.Instant;
import java.time.InstantSource;
import java.util.Locale;
import java.util.Optional;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * When the check rod was last seen and whether it was in. It is remembered, so that any thread may
 * ask at any time; {@link #readAgain} looks into the records.
 */
public final class CheckRodState {
  private final CheckRods rods;
  private final CalibrationInForce inForce;
  private final InstantSource clock;
  private volatile RodStanding standing = RodStanding.NO_ROD;

  public CheckRodState(
      Workshop workshop, SpeciesTable species, CalibrationInForce inForce, InstantSource clock)
      throws WorkshopException {
    this.rods = new CheckRods(workshop, species);
    this.inForce = inForce;
    this.clock = clock;
    readAgain();
  }

  /**
   * Looks into the records: after the rod was tested, typed or entered, and after a calibration.
   */
  public void readAgain() throws WorkshopException {
    Optional<CheckRods.Kept> rod = rods.now();
    standing =
        rod.isEmpty()
            ? RodStanding.NO_ROD
            : RodStanding.of(rod.get(), rods.readings(rod.get()), inForce.standing().since());
  }

  public RodStanding standing() {
    return standing;
  }

  /** Whether it was seen on this day. */
  public boolean wasSeenToday() {
    RodStanding now = standing;
    return now.wasSeen() && Days.areOneDay(now.newest().at(), clock.instant());
  }

  /** One line for people: "Check rod 4 h ago: within 0.1 %." */
  public String inWords() {
    RodStanding now = standing;
    if (!now.hasRod()) {
      return "No check rod yet: see Checks.";
    }
    if (!now.wasSeen()) {
      return "The check rod was not seen since the last calibration: test it first.";
    }
    Instant at = now.newest().at();
    String when = "Check rod " + Days.ago(at, clock.instant()) + ": ";
    if (now.isOut()) {
      return when + now.inWords() + ".  See Checks.";
    }
    double centre = now.chart() == null ? 0 : now.chart().individualLimits().centre();
    double off = Math.abs(now.newest().differencePercent() - centre);
    String within =
        String.format(
            Locale.ROOT,
            "within %.1f %%%s.",
            Math.max(0.1, Math.ceil(off * 10) / 10),
            now.chart() == null ? " of what its steel says" : "");
    return when + within + (wasSeenToday() ? "" : "  Not seen today.");
  }
}
