package sagwright.command;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import sagwright.bench.Calibration;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationReader;

/** The calibration by which a command turns counts into newtons and millimetres, or back. */
final class CalibrationOption {
  @Option(
      names = "--calibration",
      required = true,
      paramLabel = "FILE",
      description = "the bench's calibration")
  private Path file;

  Calibration read() throws CommandFailure {
    return read(file);
  }

  /** A calibration of both load and gauge from a file. */
  static Calibration read(Path file) throws CommandFailure {
    try {
      return CalibrationReader.requireComplete(CalibrationReader.readFile(file));
    } catch (BadDocumentException bad) {
      throw CommandFailure.badInput(file + ": " + bad.getMessage());
    }
  }
}
