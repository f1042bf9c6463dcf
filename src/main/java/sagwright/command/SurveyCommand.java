package sagwright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sagwright.job.SurveyShaft;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;

@Command(
    name = "survey",
    mixinStandardHelpOptions = true,
    description =
        "From several runs on one shaft, each with its own set-up, to the modulus along it.")
final class SurveyCommand implements Callable<Integer> {
  @Parameters(
      arity = "2..*",
      paramLabel = "SHEET.json",
      description = "two or more sheets of one shaft")
  private List<Path> files;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;
  private final SheetReader reader;
  private final SurveyShaft survey;

  SurveyCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.reader = new SheetReader(species);
    this.survey = new SurveyShaft(species);
  }

  @Override
  public Integer call() {
    return new SheetsOfOneShaft(console, survey)
        .run(files, file -> reader.readFile(file).requireRun(), this::answer);
  }

  private String answer(SurveyShaft.Answer surveyed) {
    double lengthMm = surveyed.sheets().get(0).sheet().shaft().taper().lengthMm();
    return json
        ? AnswerWriter.survey(surveyed.tag(), lengthMm, surveyed.survey(), surveyed.assumed())
        : SurveyTable.of(surveyed, lengthMm);
  }
}
