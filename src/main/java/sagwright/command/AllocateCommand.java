package sagwright.command;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.choose.Allocation;
import sagwright.grade.Sureness;
import sagwright.job.AllocateOrders;
import sagwright.job.ShopSettings;
import sagwright.quantity.Figures;
import sagwright.sheet.JsonLine;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

@Command(
    name = "allocate",
    mixinStandardHelpOptions = true,
    description = "Pairs all open orders with free blanks so that the chances add up to the most.")
final class AllocateCommand implements Callable<Integer> {
  private static final String ROW = "%-16s %-16s %8s   %-16s %8s%n";
  private static final String NONE = "–";

  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;
  private final SpeciesTable species;

  AllocateCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.species = species;
  }

  @Override
  public Integer call() throws WorkshopException {
    try (Workshop workshop = workshopOption.open()) {
      AllocateOrders.Answer answer = new AllocateOrders(workshop, species).all();
      console
          .out()
          .print(
              json
                  ? line(answer.greatest())
                  : table(answer, new ShopSettings(workshop).sureness()));
      return ExitCode.ANSWER;
    }
  }

  private static String line(Allocation allocation) {
    return new JsonLine()
            .put("sumOfChances", allocation.sumOfChances())
            .putObjects(
                "pairs",
                allocation.pairs().stream()
                    .map(
                        pair ->
                            new JsonLine()
                                .put("order", pair.order())
                                .put("tag", pair.tag())
                                .put("chance", pair.chance()))
                    .toList())
            .putTexts("without", allocation.without())
        + System.lineSeparator();
  }

  private static String table(AllocateOrders.Answer answer, Sureness sureness) {
    if (answer.chances().orders().isEmpty()) {
      return String.format("no order is open%n");
    }
    Map<String, Allocation.Pair> greatest = byOrder(answer.greatest());
    Map<String, Allocation.Pair> firstCome = byOrder(answer.firstCome());
    StringBuilder text = new StringBuilder();
    text.append(String.format(ROW, "", "all at once", "in 100", "first come", "in 100"));
    for (String order : answer.chances().orders()) {
      Allocation.Pair best = greatest.get(order);
      Allocation.Pair first = firstCome.get(order);
      text.append(
          String.format(
              ROW, order, tag(best), chance(best, sureness), tag(first), chance(first, sureness)));
    }
    text.append(
        String.format(
            ROW,
            "sum of chances",
            "",
            Figures.rounded(answer.greatest().sumOfChances(), 2),
            "",
            Figures.rounded(answer.firstCome().sumOfChances(), 2)));
    return text.toString();
  }

  private static Map<String, Allocation.Pair> byOrder(Allocation allocation) {
    Map<String, Allocation.Pair> byOrder = new HashMap<>();
    allocation.pairs().forEach(pair -> byOrder.put(pair.order(), pair));
    return byOrder;
  }

  private static String tag(Allocation.Pair pair) {
    return pair == null ? NONE : pair.tag();
  }

  private static String chance(Allocation.Pair pair, Sureness sureness) {
    return pair == null ? "" : Figures.chancePercent(pair.chance(), sureness.chance());
  }
}
