package sagwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.sheet.JsonLine;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

@Command(
    name = "promise",
    mixinStandardHelpOptions = true,
    description = "Promises a blank to an order, or takes the promise back.")
final class PromiseCommand implements Callable<Integer> {
  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--blank", required = true, paramLabel = "TAG", description = "its tag")
  private String tag;

  @Option(names = "--order", required = true, paramLabel = "ID", description = "the order's number")
  private String number;

  @Option(names = "--undo", description = "takes the promise back")
  private boolean undo;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;

  PromiseCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws WorkshopException {
    try (Workshop workshop = workshopOption.open()) {
      Blank blank = workshop.blanks().require(tag);
      WorkshopOrder order = workshop.orders().require(number);
      if (undo) {
        workshop.promises().release(blank, order);
      } else {
        workshop.promises().make(blank, order);
      }
      console
          .out()
          .println(
              json
                  ? new JsonLine()
                      .put("order", order.number())
                      .put("tag", blank.tag())
                      .put("promised", !undo)
                  : blank.tag() + (undo ? " is free again" : " is promised to " + order.number()));
    }
    return ExitCode.ANSWER;
  }
}
