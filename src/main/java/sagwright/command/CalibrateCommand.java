package sagwright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import sagwright.job.CalibrateFrame;
import sagwright.job.CalibrateGauge;
import sagwright.job.CalibrateLoad;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.wood.SpeciesTable;

/**
 * The parts of a calibration. Their answer is JSON with or without {@code --json}
 * (docs/contract.md, section 9); {@code --table} is for people.
 */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    description = "From points or a bar to a part of the bench's calibration.")
final class CalibrateCommand {
  /** The command with its three parts below it. */
  static CommandLine line(Console console, SpeciesTable species, Clock clock) {
    return new CommandLine(new CalibrateCommand())
        .addSubcommand(new CalibrateLoadCommand(console, new CalibrateLoad(clock)))
        .addSubcommand(new CalibrateGaugeCommand(console, new CalibrateGauge(clock)))
        .addSubcommand(new CalibrateFrameCommand(console, new CalibrateFrame(species, clock)));
  }

  /** Puts a part into a calibration file. */
  interface Writing {
    void into(Path calibration) throws BadDocumentException, IOException, PoorRunException;
  }

  /**
   * Writes a part where that was asked for; an answer that could not be written is none.
   *
   * @param calibration null where the answer is only printed
   */
  static void write(Path calibration, Writing part) throws CommandFailure {
    if (calibration == null) {
      return;
    }
    try {
      part.into(calibration);
    } catch (BadDocumentException bad) {
      throw CommandFailure.badInput(calibration + ": " + bad.getMessage());
    } catch (IOException e) {
      throw CommandFailure.badInput(calibration + ": cannot be written");
    } catch (PoorRunException poor) {
      throw CommandFailure.poorRun(calibration + ": " + poor.getMessage());
    }
  }
}
