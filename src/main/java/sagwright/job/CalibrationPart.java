package sagwright.job;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import sagwright.bench.Calibration;
import sagwright.sheet.JsonLine;

/** The parts that a calibration is made of, each by itself, and when each was made. */
public enum CalibrationPart {
  LOAD("x-load"),
  GAUGE("x-gauge"),
  SPRING("x-spring"),
  FRAME("x-frame");

  private final String key;

  CalibrationPart(String key) {
    this.key = key;
  }

  /** Where a workshop's calibration keeps what stands behind the part. */
  String key() {
    return key;
  }

  private boolean isIn(Calibration calibration, JsonLine document) {
    return switch (this) {
      case LOAD -> calibration.load() != null;
      case GAUGE -> calibration.gauge() != null;
      case SPRING -> calibration.gauge() != null && calibration.gauge().springNPerMm() > 0;
      case FRAME -> document.number("frameComplianceMmPerN") != null;
    };
  }

  /** Whose it is and when it was made. */
  public record Made(Instant at, String by) {}

  /**
   * When the part was made: as it says itself, else with the whole; empty where the part is not
   * there.
   */
  Optional<Made> made(Calibration calibration, String document) {
    JsonLine json = JsonLine.parse(document);
    JsonLine own = json.objectOrNull(key);
    if (own != null && own.text("made") != null) {
      try {
        return Optional.of(
            new Made(OffsetDateTime.parse(own.text("made")).toInstant(), own.text("by")));
      } catch (DateTimeParseException e) {
        // A key of somebody else's that happens to be called so.
      }
    }
    return isIn(calibration, json)
        ? Optional.of(new Made(calibration.made(), calibration.by()))
        : Optional.empty();
  }
}
