package sagwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class CommandsTest {
  private final Commands commands = new Commands(Console.standard(), null, null);

  @Test
  void everyCommandThatOpensAWorkshopIsKnownBeforehand() {
    Map<String, CommandLine> all = commands.line().getSubcommands();
    assertTrue(all.size() > 10);
    all.remove("window"); // it opens its workshop behind its first page
    Set<String> open =
        all.entrySet().stream()
            .filter(named -> named.getValue().getCommandSpec().findOption("--workshop") != null)
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet());
    Set<String> known =
        all.keySet().stream().filter(Commands::workOnWorkshop).collect(Collectors.toSet());
    assertEquals(open, known);
  }

  @Test
  void aCommandIsTheSameAloneAsAmongAll() {
    for (Map.Entry<String, CommandLine> named : commands.line().getSubcommands().entrySet()) {
      CommandLine alone = commands.line(named.getKey()).getSubcommands().get(named.getKey());
      assertEquals(named.getValue().getUsageMessage(), alone.getUsageMessage());
    }
  }
}
