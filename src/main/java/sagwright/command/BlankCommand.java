package sagwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.job.BlankRecord;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

@Command(
    name = "blank",
    mixinStandardHelpOptions = true,
    description = "The whole record of a blank, oldest first.")
final class BlankCommand implements Callable<Integer> {
  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--blank", required = true, paramLabel = "TAG", description = "its tag")
  private String tag;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;

  BlankCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws WorkshopException {
    try (Workshop workshop = workshopOption.open()) {
      BlankRecord blankRecord = BlankRecord.of(workshop, tag);
      console.out().println(json ? blankRecord.json() : BlankTable.of(blankRecord));
    }
    return ExitCode.ANSWER;
  }
}
