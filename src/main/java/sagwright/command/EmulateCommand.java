package sagwright.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.bench.ByteLine;
import sagwright.bench.LineLostException;
import sagwright.bench.LineNotOpenedException;
import sagwright.run.Samples;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;

@Command(
    name = "emulate",
    mixinStandardHelpOptions = true,
    description = "Plays a sheet's run onto a serial port as a bench head would send it.")
final class EmulateCommand implements Callable<Integer> {
  @Mixin private PortOption port;

  @Option(names = "--sheet", required = true, paramLabel = "SHEET.json", description = "the run")
  private Path sheetFile;

  @Mixin private CalibrationOption calibration;

  @Option(
      names = "--speed",
      paramLabel = "X",
      defaultValue = "1",
      description = "so many times faster than the run was (${DEFAULT-VALUE})")
  private double speed;

  @Option(
      names = "--drop",
      paramLabel = "SHARE",
      defaultValue = "0",
      description = "fault: this share of the lines, 0 to 1, is not sent")
  private double drop;

  @Option(
      names = "--flip",
      paramLabel = "SHARE",
      defaultValue = "0",
      description = "fault: this share of the lines, 0 to 1, is sent with one bit turned over")
  private double flip;

  @Option(
      names = "--stall",
      paramLabel = "SECONDS",
      defaultValue = "0",
      description = "fault: silence for so long in the middle of the run")
  private double stallS;

  @Option(names = "--restart", description = "fault: the head starts anew in the middle of the run")
  private boolean restarts;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "of the faults (${DEFAULT-VALUE})")
  private long seed;

  private final Console console;
  private final SheetReader reader;
  private final Benches benches;

  EmulateCommand(Console console, SpeciesTable species, Benches benches) {
    this.console = console;
    this.reader = new SheetReader(species);
    this.benches = benches;
  }

  @Override
  public Integer call() throws CommandFailure, InterruptedException {
    require("--speed", speed, 0.001, 1000);
    require("--drop", drop, 0, 1);
    require("--flip", flip, 0, 1);
    require("--stall", stallS, 0, 3600);
    Benches.PlayRequest request =
        new Benches.PlayRequest(
            samples(), calibration.read(), speed, drop, flip, stallS, restarts, seed);
    try (ByteLine line = port.opener(benches).open()) {
      boolean whole = benches.play(request, line);
      console.out().println(whole ? "played to its end" : "told to stop before its end");
      return ExitCode.ANSWER;
    } catch (LineNotOpenedException e) {
      throw CommandFailure.badInput("--port: " + e.getMessage());
    } catch (LineLostException e) {
      throw CommandFailure.poorRun(port.path() + ": " + e.getMessage());
    } catch (IllegalArgumentException e) {
      throw CommandFailure.badInput(sheetFile + ": run: " + e.getMessage());
    }
  }

  private Samples samples() throws CommandFailure {
    try {
      if (reader.readFile(sheetFile).requireRun().readings() instanceof Samples samples) {
        return samples;
      }
      throw CommandFailure.badInput(
          sheetFile + ": handRead: pairs noted by hand have no pace to be played at");
    } catch (BadDocumentException bad) {
      throw CommandFailure.badInput(sheetFile + ": " + bad.getMessage());
    }
  }

  private static void require(String option, double value, double least, double most)
      throws CommandFailure {
    if (!(value >= least && value <= most)) {
      throw CommandFailure.badInput(
          option + ": " + value + " is not between " + least + " and " + most);
    }
  }
}
