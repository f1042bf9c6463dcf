package sagwright.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.function.UnaryOperator;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationEdit;
import sagwright.sheet.DocumentText;

/**
 * A calibration on disk into which newly made parts are put. The file is the old one or the new one
 * at every moment, never half of either.
 */
final class CalibrationFile {
  private final Path file;

  /**
   * @param file need not be there yet
   */
  CalibrationFile(Path file) {
    this.file = file;
  }

  /**
   * Puts a part in and keeps the rest; begins the calibration where there is none.
   *
   * @throws BadDocumentException where the file is there and is no faultless calibration
   * @throws IOException where it cannot be written; then nothing has changed
   */
  void put(Clock clock, UnaryOperator<CalibrationEdit> part)
      throws BadDocumentException, IOException {
    CalibrationEdit edit =
        Files.exists(file)
            ? CalibrationEdit.of(DocumentText.ofFile(file))
            : CalibrationEdit.begin(clock.instant());
    write(part.apply(edit).text());
  }

  private void write(String text) throws IOException {
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path beside = target.resolveSibling("." + target.getFileName() + ".new");
    try {
      Files.writeString(
          beside,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE,
          StandardOpenOption.DSYNC);
      Files.move(
          beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
