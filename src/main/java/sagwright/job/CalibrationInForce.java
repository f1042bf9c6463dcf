package sagwright.job;

import java.time.Instant;
import java.time.InstantSource;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import sagwright.bench.Calibration;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationReader;
import sagwright.workshop.KeptCalibration;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * The calibration that a workshop's bench works by: the newest that was kept. It is remembered, so
 * that any thread may ask at any time; {@link #readAgain} looks into the records.
 */
public final class CalibrationInForce {
  private final Workshop workshop;
  private final InstantSource clock;
  private volatile Standing standing = Standing.NONE;

  public CalibrationInForce(Workshop workshop, InstantSource clock) throws WorkshopException {
    this.workshop = workshop;
    this.clock = clock;
    readAgain();
  }

  /**
   * As it stands.
   *
   * @param since when it was put in force; null where there is none
   * @param document null where there is none
   * @param calibration perhaps with a part missing; null where there is none
   * @param made when each part was made, of those that are there
   */
  public record Standing(
      Instant since,
      String document,
      Calibration calibration,
      Map<CalibrationPart, CalibrationPart.Made> made) {
    static final Standing NONE = new Standing(null, null, null, Map.of());

    public Standing {
      made = Map.copyOf(made);
    }

    public boolean isThere() {
      return calibration != null;
    }

    private boolean isComplete() {
      return isThere() && calibration.isComplete();
    }
  }

  /** Looks into the records: after a calibration was kept, brought in or undone. */
  public void readAgain() throws WorkshopException {
    Optional<KeptCalibration> kept = workshop.calibrations().inForce();
    standing = kept.isEmpty() ? Standing.NONE : standing(kept.get());
  }

  private static Standing standing(KeptCalibration kept) throws WorkshopException {
    try {
      Calibration calibration = CalibrationReader.read(kept.document());
      Map<CalibrationPart, CalibrationPart.Made> made = new EnumMap<>(CalibrationPart.class);
      for (CalibrationPart part : CalibrationPart.values()) {
        part.made(calibration, kept.document()).ifPresent(m -> made.put(part, m));
      }
      return new Standing(kept.at(), kept.document(), calibration, made);
    } catch (BadDocumentException e) {
      throw new WorkshopException("the calibration in force: " + e.getMessage());
    }
  }

  public Standing standing() {
    return standing;
  }

  /** Null where load or gauge was never calibrated: no test can be made then. */
  public Calibration complete() {
    Standing now = standing;
    return now.isComplete() ? now.calibration() : null;
  }

  /** One line for people. */
  public String inWords() {
    Standing now = standing;
    if (!now.isComplete()) {
      return "The bench has not been calibrated yet: see Checks.";
    }
    String until = Days.day(now.calibration().validUntil());
    return now.calibration().isValidAt(clock.instant())
        ? "Calibration holds until " + until + "."
        : "Calibration held until " + until + ": see Checks.";
  }
}
