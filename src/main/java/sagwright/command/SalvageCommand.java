package sagwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.job.RunAnswer;
import sagwright.job.SalvageRuns;
import sagwright.sheet.JsonLine;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.RunOutcome;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

@Command(
    name = "salvage",
    mixinStandardHelpOptions = true,
    description = "Closes every run that was cut off by a power failure or a crash.")
final class SalvageCommand implements Callable<Integer> {
  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--json", description = "one JSON object on one line for each run")
  private boolean json;

  private final Console console;
  private final SpeciesTable species;

  SalvageCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.species = species;
  }

  @Override
  public Integer call() throws WorkshopException {
    try (Workshop workshop = workshopOption.open()) {
      List<SalvageRuns.Salvaged> salvaged = new SalvageRuns(workshop, species).all();
      for (SalvageRuns.Salvaged one : salvaged) {
        console.out().println(json ? line(one) : inWords(one));
      }
      if (salvaged.isEmpty() && !json) {
        console.out().println("no run was cut off");
      }
    }
    return ExitCode.ANSWER;
  }

  private static JsonLine line(SalvageRuns.Salvaged salvaged) {
    JsonLine line =
        new JsonLine()
            .put("run", salvaged.run().id())
            .put("blank", salvaged.tag())
            .put("samples", salvaged.samples());
    RunOutcome outcome = salvaged.run().outcome();
    return outcome.answer() == null
        ? line.putNull("answer").put("noAnswer", outcome.noAnswer())
        : line.put("answer", RunAnswer.of(salvaged.run()));
  }

  private static String inWords(SalvageRuns.Salvaged salvaged) {
    RunOutcome outcome = salvaged.run().outcome();
    String run =
        "run "
            + salvaged.run().id()
            + " on "
            + salvaged.tag()
            + ", "
            + salvaged.samples()
            + " samples: ";
    return run
        + (outcome.answer() == null
            ? "kept, no answer: " + outcome.noAnswer()
            : "kept, modulus "
                + Math.round(JsonLine.parse(outcome.answer()).number("modulusMPa"))
                + " MPa");
  }
}
