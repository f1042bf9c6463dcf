package sagwright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.check.FrameCompliance;
import sagwright.job.CalibrateFrame;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationAnswer;
import sagwright.sheet.Sheet;
import sagwright.uncertainty.Estimate;

@Command(
    name = "frame",
    mixinStandardHelpOptions = true,
    description = "What the frame gives, from a run on a stout bar of known modulus.")
final class CalibrateFrameCommand implements Callable<Integer> {
  /** What the sheet may say of the frame is the very thing that is looked for. */
  private static final String NOT_USED = "frameComplianceMmPerN";

  @Option(
      names = "--sheet",
      required = true,
      paramLabel = "SHEET.json",
      description = "the bar, its set-up and its run")
  private Path sheet;

  @Option(
      names = "--modulus",
      required = true,
      paramLabel = "MPA",
      description = "of the bar, MPa (steel about 206000)")
  private double modulusMPa;

  @Option(
      names = "--modulus-uncertainty",
      paramLabel = "MPA",
      defaultValue = "0",
      description = "its standard uncertainty, MPa (${DEFAULT-VALUE})")
  private double modulusUncertaintyMPa;

  @Mixin private AnswerOptions options;

  private final Console console;
  private final CalibrateFrame calibrate;

  CalibrateFrameCommand(Console console, CalibrateFrame calibrate) {
    this.console = console;
    this.calibrate = calibrate;
  }

  @Override
  public Integer call() throws CommandFailure {
    if (!(modulusMPa > 0 && Double.isFinite(modulusMPa))) {
      throw CommandFailure.badInput(
          "calibrate frame: --modulus is " + modulusMPa + ", must be above 0");
    }
    if (!(modulusUncertaintyMPa >= 0 && Double.isFinite(modulusUncertaintyMPa))) {
      throw CommandFailure.badInput(
          "calibrate frame: --modulus-uncertainty is "
              + modulusUncertaintyMPa
              + ", must not be below 0");
    }
    Sheet bar = bar();
    FrameCompliance frame = frame(bar);
    CalibrateCommand.write(options.into(), file -> calibrate.writeInto(file, frame));
    List<String> assumed = bar.assumed().stream().filter(key -> !key.equals(NOT_USED)).toList();
    console
        .out()
        .println(
            options.asTable()
                ? CalibrationTable.of(frame, assumed)
                : CalibrationAnswer.frame(frame, assumed));
    return ExitCode.ANSWER;
  }

  private Sheet bar() throws CommandFailure {
    try {
      return calibrate.read(sheet);
    } catch (BadDocumentException bad) {
      throw CommandFailure.badInput(sheet + ": " + bad.getMessage());
    }
  }

  private FrameCompliance frame(Sheet bar) throws CommandFailure {
    try {
      return calibrate.work(bar, new Estimate(modulusMPa, modulusUncertaintyMPa));
    } catch (PoorRunException poor) {
      throw CommandFailure.poorRun(sheet + ": " + poor.getMessage());
    }
  }
}
