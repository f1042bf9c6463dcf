package sagwright.job;

import java.time.Instant;
import java.util.Optional;
import sagwright.bench.Calibration;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationReader;
import sagwright.uncertainty.Warning;
import sagwright.workshop.WorkshopException;

/** What the circumstances of a test make doubtful, whatever its readings say. */
public sealed interface TestWarning extends Warning {
  /**
   * That a run was recorded while no calibration held.
   *
   * @param calibration that it was recorded by, null for none
   */
  record NoValidCalibration(Calibration calibration) implements TestWarning {
    @Override
    public String inWords() {
      if (calibration == null) {
        return "recorded under no calibration";
      }
      return "recorded under no valid calibration: the one in force held from "
          + Days.day(calibration.made())
          + " to "
          + Days.day(calibration.validUntil());
    }
  }

  /**
   * Of a run that a bench head recorded.
   *
   * @param document the calibration that it was recorded by, null for none
   */
  static Optional<Warning> ofCalibration(String document, Instant startedAt)
      throws WorkshopException {
    if (document == null) {
      return Optional.of(new NoValidCalibration(null));
    }
    try {
      Calibration calibration = CalibrationReader.read(document);
      return calibration.isValidAt(startedAt)
          ? Optional.empty()
          : Optional.of(new NoValidCalibration(calibration));
    } catch (BadDocumentException e) {
      throw new WorkshopException("the calibration of a run: " + e.getMessage());
    }
  }
}
