package sagwright.job;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import sagwright.bench.LoadCalibration;
import sagwright.check.BadPointsException;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.check.PointsReader;
import sagwright.check.PoorPointsException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.DocumentText;

/** Calibrates the load by known masses (docs/contract.md, section 9). */
public final class CalibrateLoad {
  private final Clock clock;

  public CalibrateLoad(Clock clock) {
    this.clock = clock;
  }

  /**
   * @param points a file of masses and counts
   */
  public LineCalibration work(Path points, LocalGravity gravity)
      throws BadDocumentException, BadPointsException, PoorPointsException {
    return LineCalibration.of(PointsReader.ofMasses(gravity).read(DocumentText.ofFile(points)));
  }

  /** Puts it into a calibration file and keeps the rest of it; begins one where there is none. */
  public void writeInto(Path calibration, LineCalibration line)
      throws BadDocumentException, IOException {
    LoadCalibration load =
        new LoadCalibration(
            line.slope(), line.scaleUncertaintyPercent(), line.residualStd(), line.greatestPoint());
    new CalibrationFile(calibration).put(clock, edit -> edit.withLoad(load));
  }
}
