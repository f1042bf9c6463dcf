package sagwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.job.GradeBlank;
import sagwright.job.Signature;
import sagwright.run.PoorRunException;
import sagwright.sheet.JsonLine;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

@Command(
    name = "grade",
    mixinStandardHelpOptions = true,
    description = "Grades a blank for an order and keeps the grade on the blank's record.")
final class GradeCommand implements Callable<Integer> {
  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--blank", required = true, paramLabel = "TAG", description = "its tag")
  private String tag;

  @Option(names = "--order", required = true, paramLabel = "ID", description = "the order's number")
  private String order;

  @Option(
      names = "--initials",
      paramLabel = "KM",
      description = "who grades it; left out, the initials that the shop has set")
  private String initials;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;
  private final SpeciesTable species;

  GradeCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.species = species;
  }

  @Override
  public Integer call() throws WorkshopException, PoorRunException {
    try (Workshop workshop = workshopOption.open()) {
      GradeBlank.Graded graded = new GradeBlank(workshop, species).grade(tag, order, initials());
      console
          .out()
          .println(
              json
                  ? JsonLine.parse(graded.json()).put("gradeId", graded.gradeId())
                  : ForecastTable.of(tag, graded.graded()).stripTrailing());
    }
    return ExitCode.ANSWER;
  }

  private String initials() throws WorkshopException {
    return initials == null ? null : Signature.requireInitials(initials);
  }
}
