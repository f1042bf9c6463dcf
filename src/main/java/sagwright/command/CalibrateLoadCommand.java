package sagwright.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.job.CalibrateLoad;
import sagwright.sheet.CalibrationAnswer;

@Command(
    name = "load",
    mixinStandardHelpOptions = true,
    description = "The load by known masses, up and down.")
final class CalibrateLoadCommand implements Callable<Integer> {
  @Option(
      names = "--points",
      required = true,
      paramLabel = "FILE.csv",
      description = "massG,counts,direction")
  private Path points;

  @Option(names = "--gravity", paramLabel = "G", description = "of the bench's place, m/s²")
  private Double gravity;

  @Option(names = "--latitude", paramLabel = "DEG", description = "in its place: -90 to 90")
  private Double latitude;

  @Option(
      names = "--altitude",
      paramLabel = "M",
      description = "with the latitude: above the sea, m (0)")
  private Double altitude;

  @Mixin private AnswerOptions options;

  private final Console console;
  private final CalibrateLoad calibrate;

  CalibrateLoadCommand(Console console, CalibrateLoad calibrate) {
    this.console = console;
    this.calibrate = calibrate;
  }

  @Override
  public Integer call() throws CommandFailure {
    LocalGravity here = localGravity();
    LineCalibration line = PointsFile.work(points, file -> calibrate.work(file, here));
    CalibrateCommand.write(options.into(), file -> calibrate.writeInto(file, line));
    console
        .out()
        .println(
            options.asTable()
                ? CalibrationTable.of(line, CalibrationTable.LOAD)
                : CalibrationAnswer.line(line));
    return ExitCode.ANSWER;
  }

  private LocalGravity localGravity() throws CommandFailure {
    if (gravity == null ? latitude == null : latitude != null) {
      throw CommandFailure.badInput("calibrate load: one of --gravity and --latitude is needed");
    }
    if (latitude == null && altitude != null) {
      throw CommandFailure.badInput("calibrate load: --altitude goes with --latitude");
    }
    try {
      return gravity != null
          ? new LocalGravity(gravity)
          : LocalGravity.at(new LocalGravity.Place(latitude, altitude == null ? 0 : altitude));
    } catch (IllegalArgumentException off) {
      throw CommandFailure.badInput("calibrate load: " + off.getMessage());
    }
  }
}
