package sagwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sagwright.quantity.Figures;
import sagwright.sheet.MoistureAnswer;
import sagwright.wood.RoomAir;

@Command(
    name = "moisture",
    mixinStandardHelpOptions = true,
    description = "The moisture that wood settles to in a room's air.")
final class MoistureCommand implements Callable<Integer> {
  @Option(names = "--temperature", required = true, paramLabel = "C", description = "-1.1 to 50 °C")
  private double temperatureC;

  @Option(
      names = "--humidity",
      required = true,
      paramLabel = "PERCENT",
      description = "0 to 100 %%")
  private double humidityPercent;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;

  MoistureCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws CommandFailure {
    double moisture = air().equilibriumMoisturePercent();
    console
        .out()
        .println(
            json
                ? MoistureAnswer.of(moisture)
                : "wood settles to " + Figures.rounded(moisture, 1) + " % moisture in this air");
    return ExitCode.ANSWER;
  }

  private RoomAir air() throws CommandFailure {
    try {
      return new RoomAir(temperatureC, humidityPercent);
    } catch (IllegalArgumentException outside) {
      throw CommandFailure.badInput("moisture: " + outside.getMessage());
    }
  }
}
