package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sagwright.bench.Ending;
import sagwright.command.Console;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;

/** What a program that was killed in mid-run has left of it, once it is salvaged. */
final class KeptRun {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern READING = Pattern.compile("\\$SG,(\\d+),[^\n]*\n");
  private static final double MOST_LOST_S = 0.1;

  /**
   * Beside it: so many times the longest that a thread of this program had to wait for a processor.
   * The killed program had to wait as well, and what it had no time to write it could not keep.
   */
  private static final int LATENESSES = 10;

  private static final double LEAST_LATENESS_S = 0.05;

  private KeptRun() {}

  /** A workshop with one blank that one run counts for. */
  static Path workshopIn(Path folder) throws Exception {
    Path file = folder.resolve("workshop.db");
    run("import", "docs/examples/25-014.json", "--workshop", file.toString());
    return file;
  }

  /**
   * Closes what was cut off, and holds it against what had been read of the line by then: readings
   * whose seq began at 0.
   *
   * @param consumed how many readings the killed program had read
   * @param perSecond how many came a second
   */
  static void check(Path file, int consumed, int perSecond, double latenessS) throws Exception {
    run("salvage", "--workshop", file.toString(), "--json");
    assertEquals(List.of(), run("salvage", "--workshop", file.toString(), "--json"));
    try (Workshop workshop = Workshop.open(file, new Keeper(InstantSource.system(), "test"))) {
      List<Run> runs = workshop.runs().of(workshop.blanks().require("25-014"));
      assertTrue(runs.get(0).counts(), "the run that was there before");
      int next = 0;
      if (runs.size() > 1) {
        if (runs.get(1).ending().equals(Ending.LOAD_OFF.inWords())) {
          assertTrue(runs.get(1).counts(), "what came after its end is no part of it");
          return;
        }
        next = afterTheLastOf(workshop.runs().wire(runs.get(1)));
      }
      double most = perSecond * (MOST_LOST_S + LATENESSES * Math.max(LEAST_LATENESS_S, latenessS));
      assertTrue(
          consumed - next <= most,
          "lost " + (consumed - next) + " readings of " + consumed + ", late " + latenessS + " s");
    }
  }

  /** The seq behind the last reading that is whole; there may be no hole before it. */
  private static int afterTheLastOf(byte[] wire) {
    Matcher reading = READING.matcher(new String(wire, StandardCharsets.US_ASCII));
    int next = -1;
    while (reading.find()) {
      int seq = Integer.parseInt(reading.group(1));
      assertTrue(next < 0 || seq == next, "a hole before reading " + seq);
      next = seq + 1;
    }
    return Math.max(0, next);
  }

  /** What a command says, a line each where it says JSON. */
  static List<JsonNode> run(String... args) throws Exception {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(
            new ByteArrayInputStream(new byte[0]), new PrintWriter(out), new PrintWriter(err));
    assertEquals(0, Sagwright.run(console, args), err::toString);
    List<JsonNode> lines = new ArrayList<>();
    if (args[args.length - 1].equals("--json")) {
      for (String line : out.toString().lines().toList()) {
        lines.add(JSON.readTree(line));
      }
    }
    return lines;
  }
}
