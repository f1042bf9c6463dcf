package sagwright.command;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** What the parts of {@code calibrate} do with their answer. */
final class AnswerOptions {
  @Option(
      names = "--into",
      paramLabel = "CALIBRATION.json",
      description = "put it into this calibration and keep the rest; begin one where there is none")
  private Path into;

  @Option(names = "--json", description = "one JSON object on one line (so without it, too)")
  private boolean json;

  @Option(names = "--table", description = "a table for people in its place")
  private boolean table;

  /** Null where nothing is to be written. */
  Path into() {
    return into;
  }

  boolean asTable() {
    return table && !json;
  }
}
