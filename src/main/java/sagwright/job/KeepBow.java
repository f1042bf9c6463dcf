package sagwright.job;

import java.util.Locale;
import sagwright.survey.Bow;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Keeps how far a blank is off straight, as its newest caliper entry. */
final class KeepBow {
  private final Workshop workshop;

  KeepBow(Workshop workshop) {
    this.workshop = workshop;
  }

  /**
   * @param laid the blank that was rolled
   * @param readingMm a gauge reading at each turn, unloaded, from any zero
   * @throws WorkshopException also where the turns do not tell a bow
   */
  Bow keep(LaidBlank laid, double[] turnDegrees, double[] readingMm) throws WorkshopException {
    Bow bow;
    try {
      bow = Bow.of(turnDegrees, readingMm, laid.before().instrument().gaugeUncertaintyMm());
    } catch (IllegalArgumentException e) {
      throw new WorkshopException(e.getMessage());
    }
    workshop
        .blanks()
        .addCaliperEntry(
            laid.blank(),
            laid.before().withBow(bow.sizeMm(), bow.sideDegrees()),
            String.format(
                Locale.ROOT,
                "rolled past the gauge: bow %.2f mm, belly at %.0f°",
                bow.sizeMm(),
                bow.sideDegrees()));
    return bow;
  }
}
