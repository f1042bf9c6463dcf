package sagwright.command;

import picocli.CommandLine.Option;
import sagwright.bench.LineOpener;

/** The serial port that a command speaks over. */
final class PortOption {
  static final String ORDINARY_BAUD = "" + LineOpener.ORDINARY_BAUD;

  @Option(names = "--port", required = true, paramLabel = "PATH", description = "serial port")
  private String path;

  @Option(
      names = "--baud",
      paramLabel = "N",
      defaultValue = ORDINARY_BAUD,
      description = "its speed (${DEFAULT-VALUE})")
  private int baud;

  String path() {
    return path;
  }

  LineOpener opener(Benches benches) throws CommandFailure {
    requireSpeed(baud);
    return benches.port(path, baud);
  }

  static void requireSpeed(int baud) throws CommandFailure {
    if (baud <= 0) {
      throw CommandFailure.badInput("--baud: " + baud + " is not above 0");
    }
  }
}
