package sagwright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sagwright.grade.GradedForecast;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.job.ForecastShaft;
import sagwright.job.SurveyShaft;
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
    description = "What a tested blank will be when it is finished to an order.",
    footer = "Several sheets of one shaft are surveyed first: see survey.")
final class ForecastCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "SHEET.json", description = "sheets of the blank")
  private List<Path> files;

  @Option(names = "--order", required = true, paramLabel = "ORDER.json", description = "the order")
  private Path orderFile;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;
  private final SheetReader reader;
  private final ForecastShaft forecast;
  private final SurveyShaft survey;

  ForecastCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.reader = new SheetReader(species);
    this.forecast = new ForecastShaft(species, Sureness.USUAL);
    this.survey = new SurveyShaft(species);
  }

  @Override
  public Integer call() throws CommandFailure {
    Order order = order();
    if (files.size() > 1) {
      return new SheetsOfOneShaft(console, survey)
          .run(files, this::read, surveyed -> answer(surveyed, order));
    }
    return new SheetBatch(console, json).run(files, file -> answer(file, order));
  }

  private Order order() throws CommandFailure {
    try {
      return OrderReader.readFile(orderFile);
    } catch (BadDocumentException bad) {
      throw CommandFailure.badInput(orderFile + ": " + bad.getMessage());
    }
  }

  private Sheet read(Path file) throws BadDocumentException, PoorRunException {
    Sheet sheet = reader.readFile(file);
    if (!sheet.hasRun()) {
      throw new PoorRunException("has no run: a forecast rests on a tested blank");
    }
    return sheet;
  }

  private String answer(SurveyShaft.Answer surveyed, Order order) {
    GradedForecast graded = forecast.of(surveyed, order);
    return json
        ? AnswerWriter.forecast(
            surveyed.tag(), graded, surveyed.assumed(), surveyed.survey().warnings())
        : ForecastTable.of(surveyed.tag(), graded);
  }

  private String answer(Path file, Order order) throws BadDocumentException, PoorRunException {
    Sheet sheet = read(file);
    ForecastShaft.Answer answer = forecast.of(sheet, order);
    return json
        ? AnswerWriter.forecast(
            sheet.tag(), answer.graded(), sheet.assumed(), answer.evaluation().warnings())
        : ForecastTable.of(sheet.tag(), answer.graded());
  }
}
