package sagwright.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.check.LineCalibration;
import sagwright.job.CalibrateGauge;
import sagwright.sheet.CalibrationAnswer;

@Command(
    name = "gauge",
    mixinStandardHelpOptions = true,
    description = "The gauge by blocks of known length, up and down.")
final class CalibrateGaugeCommand implements Callable<Integer> {
  @Option(
      names = "--points",
      required = true,
      paramLabel = "FILE.csv",
      description = "lengthMm,steps,direction")
  private Path points;

  @Mixin private AnswerOptions options;

  private final Console console;
  private final CalibrateGauge calibrate;

  CalibrateGaugeCommand(Console console, CalibrateGauge calibrate) {
    this.console = console;
    this.calibrate = calibrate;
  }

  @Override
  public Integer call() throws CommandFailure {
    LineCalibration line = PointsFile.work(points, calibrate::work);
    CalibrateCommand.write(options.into(), file -> calibrate.writeInto(file, line));
    String answer =
        options.asTable()
            ? CalibrationTable.of(line, CalibrationTable.GAUGE)
            : CalibrationAnswer.line(line);
    console.out().println(answer);
    return ExitCode.ANSWER;
  }
}
