package sagwright.job;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import sagwright.check.BadPointsException;
import sagwright.check.LineCalibration;
import sagwright.check.PointsReader;
import sagwright.check.PoorPointsException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationEdit.GaugeLine;
import sagwright.sheet.DocumentText;

/** Calibrates the gauge by blocks of known length (docs/contract.md, section 9). */
public final class CalibrateGauge {
  private final Clock clock;

  public CalibrateGauge(Clock clock) {
    this.clock = clock;
  }

  /**
   * @param points a file of lengths and steps
   */
  public LineCalibration work(Path points)
      throws BadDocumentException, BadPointsException, PoorPointsException {
    return LineCalibration.of(PointsReader.ofBlocks().read(DocumentText.ofFile(points)));
  }

  /** Puts it into a calibration file and keeps the rest of it; begins one where there is none. */
  public void writeInto(Path calibration, LineCalibration line)
      throws BadDocumentException, IOException {
    GaugeLine gauge =
        new GaugeLine(
            line.slope(), line.scaleUncertaintyPercent(), line.residualStd(), line.greatestPoint());
    new CalibrationFile(calibration).put(clock, edit -> edit.withGauge(gauge));
  }
}
