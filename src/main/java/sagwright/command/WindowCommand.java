package sagwright.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sagwright.bench.Calibration;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.WorkshopException;

@Command(
    name = "window",
    mixinStandardHelpOptions = true,
    description = {
      "Opens the window; so does the program with no command at all.",
      "With no port the practice bench stands in, its wood in a workshop of its own. Where there is"
          + " no display, one whole practice test runs in the terminal."
    })
final class WindowCommand implements Callable<Integer> {
  @Option(names = "--workshop", paramLabel = "FILE", description = "the workshop's file")
  private Path workshop;

  @Option(names = "--port", paramLabel = "PATH", description = "serial port of the bench head")
  private String port;

  @Option(
      names = "--baud",
      paramLabel = "N",
      defaultValue = PortOption.ORDINARY_BAUD,
      description = "its speed (${DEFAULT-VALUE})")
  private int baud;

  @Option(
      names = "--calibration",
      paramLabel = "FILE",
      description = "the bench's calibration (left out: the one that the workshop keeps)")
  private Path calibrationFile;

  @Option(names = "--dark", description = "open in the dark theme")
  private boolean dark;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "20260302",
      description = "of the practice bench (${DEFAULT-VALUE})")
  private long seed;

  private final Console console;
  private final SpeciesTable species;
  private final Windows windows;

  WindowCommand(Console console, SpeciesTable species, Windows windows) {
    this.console = console;
    this.species = species;
    this.windows = windows;
  }

  @Override
  public Integer call() throws CommandFailure, WorkshopException, InterruptedException {
    PortOption.requireSpeed(baud);
    if (!windows.hasDisplay()) {
      if (port != null) {
        throw CommandFailure.badInput("there is no display for the window: see record --help");
      }
      new PracticeInTerminal(console, species, windows.practiceBench(seed)).run(workshop);
    } else {
      Calibration calibration =
          calibrationFile == null ? null : CalibrationOption.read(calibrationFile);
      windows.open(new Windows.WindowRequest(workshop, port, baud, calibration, dark, seed));
    }
    return ExitCode.ANSWER;
  }
}
