package sagwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.job.RankBlanks;
import sagwright.job.ShopSettings;
import sagwright.sheet.AnswerLines;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

@Command(
    name = "rank",
    mixinStandardHelpOptions = true,
    description = "Puts the free blanks in order for one order, best first.")
final class RankCommand implements Callable<Integer> {
  private static final int LINES_AT_ONCE = 250;

  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--order", required = true, paramLabel = "ID", description = "the order's number")
  private String number;

  @Option(names = "--most", paramLabel = "N", description = "no more than so many blanks")
  private Integer most;

  @Option(names = "--json", description = "one JSON object a blank, each on one line")
  private boolean json;

  private final Console console;
  private final SpeciesTable species;

  RankCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.species = species;
  }

  @Override
  public Integer call() throws WorkshopException, CommandFailure {
    if (most != null && most < 1) {
      throw CommandFailure.badInput("--most must be 1 or more, not " + most);
    }
    try (Workshop workshop = workshopOption.open()) {
      RankBlanks.Answer answer =
          new RankBlanks(workshop, species).of(workshop.orders().require(number));
      List<RankBlanks.Ranked> shown =
          answer.blanks().stream().limit(most == null ? Integer.MAX_VALUE : most).toList();
      if (json) {
        print(shown);
      } else {
        console.out().print(RankTable.of(answer, shown, new ShopSettings(workshop).sureness()));
      }
      return ExitCode.ANSWER;
    }
  }

  /** By the hundred: a line at a time costs more than working it out. */
  private void print(List<RankBlanks.Ranked> shown) {
    IntStream.range(0, (shown.size() + LINES_AT_ONCE - 1) / LINES_AT_ONCE)
        .parallel()
        .mapToObj(
            part -> {
              int from = part * LINES_AT_ONCE;
              int to = Math.min(from + LINES_AT_ONCE, shown.size());
              AnswerLines lines = new AnswerLines(to - from);
              shown.subList(from, to).forEach(ranked -> ranked.addTo(lines));
              return lines;
            })
        .forEachOrdered(lines -> lines.printTo(console.out()));
  }
}
