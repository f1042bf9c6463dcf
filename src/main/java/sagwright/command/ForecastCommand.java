package sagwright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.job.ForecastShaft;
import sagwright.run.PoorRunException;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderReader;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;

@Command(
    name = "forecast",
    mixinStandardHelpOptions = true,
    description = "What a tested blank will be when it is finished to an order.")
final class ForecastCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "SHEET.json", description = "sheet of the blank")
  private List<Path> files;

  @Option(names = "--order", required = true, paramLabel = "ORDER.json", description = "the order")
  private Path orderFile;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;
  private final SheetReader reader;
  private final ForecastShaft forecast;

  ForecastCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.reader = new SheetReader(species);
    this.forecast = new ForecastShaft(species, Sureness.USUAL);
  }

  @Override
  public Integer call() throws CommandFailure {
    Order order = order();
    return new SheetBatch(console, json).run(files, file -> answer(file, order));
  }

  private Order order() throws CommandFailure {
    try {
      return OrderReader.readFile(orderFile);
    } catch (BadDocumentException bad) {
      throw CommandFailure.badInput(orderFile + ": " + bad.getMessage());
    }
  }

  private String answer(Path file, Order order) throws BadDocumentException, PoorRunException {
    Sheet sheet = reader.readFile(file);
    if (!sheet.hasRun()) {
      throw new PoorRunException("has no run: a forecast rests on a tested blank");
    }
    ForecastShaft.Answer answer = forecast.of(sheet, order);
    return json
        ? AnswerWriter.forecast(
            sheet.tag(), answer.graded(), sheet.assumed(), answer.evaluation().warnings())
        : ForecastTable.of(sheet.tag(), answer.graded());
  }
}
