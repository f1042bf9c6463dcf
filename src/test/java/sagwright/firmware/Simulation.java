package sagwright.firmware;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;

/**
 * One run of the simulated bench. Each {@code with…} adds an option of {@code bench-sim --help}; a
 * simulation can be used once.
 */
final class Simulation {
  private final Path bench;
  private final Path head;
  private final List<String> options = new ArrayList<>();

  Simulation(Path bench, Path head) {
    this.bench = bench;
    this.head = head;
  }

  /**
   * What came out: what the head sent, a character a byte, and the report of the simulated parts.
   */
  record Outcome(String text, HeadStream stream, Map<String, Double> report) {
    double reported(String name) {
      Double value = report.get(name);
      Assertions.assertNotNull(value, () -> name + " is not in " + report);
      return value;
    }
  }

  Simulation with(String option, Object value) {
    options.add("--" + option);
    options.add(String.valueOf(value));
    return this;
  }

  Simulation seconds(double seconds) {
    return with("seconds", seconds);
  }

  /** What goes down the line to the head, at a simulated time. */
  Simulation say(double atSeconds, String text) {
    return with("say", atSeconds + ":" + text);
  }

  Simulation fault(String fault) {
    return with("fault", fault);
  }

  /** Runs in simulated time alone, as fast as it goes: the same bytes each time. */
  Outcome run() throws IOException, InterruptedException {
    Path out = Files.createTempFile("head", ".txt");
    try {
      Process process = new ProcessBuilder(command("--out", out.toString())).start();
      process.getOutputStream().close();
      String report = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
      Assertions.assertTrue(process.waitFor(120, TimeUnit.SECONDS), "the simulation hangs");
      Assertions.assertEquals(0, process.exitValue(), report);
      String text = Files.readString(out, StandardCharsets.ISO_8859_1);
      return new Outcome(text, HeadStream.of(text), reportOf(report));
    } finally {
      Files.deleteIfExists(out);
    }
  }

  /**
   * Starts it behind a pseudo-terminal; its path is the first line of its standard output.
   *
   * @param report where the report of the simulated parts goes
   */
  Process startOnTerminal(Path report) throws IOException {
    return new ProcessBuilder(command("--pty", "--wait")).redirectError(report.toFile()).start();
  }

  private List<String> command(String... more) {
    List<String> command = new ArrayList<>(List.of(bench.toString()));
    command.addAll(options);
    command.addAll(List.of(more));
    command.add(head.toString());
    return command;
  }

  static Map<String, Double> reportOf(String text) {
    Map<String, Double> report = new HashMap<>();
    for (String line : text.split("\n", -1)) {
      String[] parts = line.split(" ", -1);
      if (parts.length == 2) {
        report.put(parts[0], Double.valueOf(parts[1]));
      }
    }
    return report;
  }
}
