package sagwright.command;

import java.nio.file.Path;
import sagwright.check.BadPointsException;
import sagwright.check.LineCalibration;
import sagwright.check.PoorPointsException;
import sagwright.sheet.BadDocumentException;

/** A file of points worked out, every fault one line that names the file. */
final class PointsFile {
  /** From points to a line. */
  interface Work {
    LineCalibration of(Path points)
        throws BadDocumentException, BadPointsException, PoorPointsException;
  }

  private PointsFile() {}

  static LineCalibration work(Path points, Work work) throws CommandFailure {
    try {
      return work.of(points);
    } catch (BadDocumentException | BadPointsException bad) {
      throw CommandFailure.badInput(points + ": " + bad.getMessage());
    } catch (PoorPointsException poor) {
      throw CommandFailure.poorRun(points + ": " + poor.getMessage());
    }
  }
}
