package sagwright.command;

import picocli.CommandLine.Option;
import sagwright.bench.LineOpener;

/** The serial port that a command speaks over. */
final class PortOption {
  @Option(names = "--port", required = true, paramLabel = "PATH", description = "serial port")
  private String path;

  @Option(
      names = "--baud",
      paramLabel = "N",
      defaultValue = "115200",
      description = "its speed (${DEFAULT-VALUE})")
  private int baud;

  String path() {
    return path;
  }

  LineOpener opener(Benches benches) throws CommandFailure {
    if (baud <= 0) {
      throw CommandFailure.badInput("--baud: " + baud + " is not above 0");
    }
    return benches.port(path, baud);
  }
}
