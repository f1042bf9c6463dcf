package sagwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.job.ExportBlank;
import sagwright.run.PoorRunException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = "A blank's latest run as a sheet, which gives the same answer elsewhere.")
final class ExportCommand implements Callable<Integer> {
  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--blank", required = true, paramLabel = "TAG", description = "its tag")
  private String tag;

  @Option(names = "--all", description = "all its runs that count, a line each")
  private boolean all;

  @Option(names = "--json", description = "changes nothing: a sheet is JSON")
  private boolean json;

  private final Console console;
  private final SpeciesTable species;

  ExportCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.species = species;
  }

  @Override
  public Integer call() throws WorkshopException, PoorRunException {
    try (Workshop workshop = workshopOption.open()) {
      new ExportBlank(workshop, species).sheets(tag, all).forEach(console.out()::println);
    }
    return ExitCode.ANSWER;
  }
}
