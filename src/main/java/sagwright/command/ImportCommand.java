package sagwright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sagwright.job.ImportDocuments;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

@Command(
    name = "import",
    mixinStandardHelpOptions = true,
    description = "Brings sheets and orders into a workshop. Nothing that is there is overwritten.")
final class ImportCommand implements Callable<Integer> {
  @Parameters(
      arity = "1..*",
      paramLabel = "FILE.json",
      description = "a sheet or an order; a folder stands for its .json files; - reads one a line")
  private List<Path> files;

  @Mixin private WorkshopOption workshopOption;

  @Option(
      names = "--add",
      description = "lets a sheet join a blank that is there, an order become a newer version")
  private boolean add;

  @Option(names = "--json", description = "one JSON object on one line for each file")
  private boolean json;

  private final Console console;
  private final SpeciesTable species;
  private int exitCode = ExitCode.ANSWER;

  ImportCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.species = species;
  }

  @Override
  public Integer call() throws WorkshopException {
    exitCode = ExitCode.ANSWER;
    try (Workshop workshop = workshopOption.openOrCreate()) {
      ImportDocuments documents = new ImportDocuments(workshop, species);
      new ImportSources(console.in()).forEach(files, source -> bring(documents, source));
    }
    return exitCode;
  }

  private void bring(ImportDocuments documents, ImportSources.Source source) {
    try {
      brought(source, documents.bring(source.text().read(), add));
    } catch (BadDocumentException | WorkshopException e) {
      exitCode = ExitCode.BAD_INPUT;
      console.complain(source.inWords() + ": " + e.getMessage());
      if (json) {
        console.out().println(line(source).put("error", e.getMessage()));
      }
    }
  }

  private void brought(ImportSources.Source source, ImportDocuments.Brought brought) {
    if (brought.noAnswer() != null) {
      console.complain(
          source.inWords() + ": the run is kept and gave no answer: " + brought.noAnswer());
    }
    if (json) {
      JsonLine line = line(source);
      if (brought.orderNumber() != null) {
        line.put("order", brought.orderNumber());
      } else {
        line.put("tag", brought.tag());
      }
      console
          .out()
          .println(
              brought.runId() == null ? line.putNull("run") : line.put("run", brought.runId()));
      return;
    }
    String what =
        brought.orderNumber() != null
            ? "order " + brought.orderNumber()
            : "blank "
                + brought.tag()
                + (brought.runId() == null ? "" : ", run " + brought.runId());
    console.out().println(source.inWords() + ": " + what);
  }

  private static JsonLine line(ImportSources.Source source) {
    JsonLine line = new JsonLine().put("file", source.file());
    return source.line() == 0 ? line : line.put("line", source.line());
  }
}
