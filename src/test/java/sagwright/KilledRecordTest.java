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
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.bench.Ending;
import sagwright.bench.InventedBench;
import sagwright.bench.PlayedHead;
import sagwright.bench.PseudoTerminal;
import sagwright.bench.Reading;
import sagwright.bench.Waiting;
import sagwright.bench.WireFormat;
import sagwright.command.Console;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;

/**
 * The real {@code record} on a real port, killed as a power cut would: nothing that was said to be
 * kept is lost, and of a run that went on no more than its last tenth of a second.
 */
class KilledRecordTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int PER_SECOND = 400;
  private static final double MOST_LOST_S = 0.1;

  /**
   * Beside it: so many times the longest that a thread of this program had to wait for a processor.
   * The killed program had to wait as well, and what it had no time to write it could not keep.
   */
  private static final int LATENESSES = 10;

  private static final double LEAST_LATENESS_S = 0.05;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {3, 170, 420, 660, 790})
  void aKilledRunIsKeptButForItsLastTenthOfASecond(int readings) throws Exception {
    killAfter(readings);
  }

  /** Outside the ordinary run: kills at a hundred other moments. */
  @Tag("long")
  @RepeatedTest(100)
  void aRunKilledAtAnyMomentIsKept(RepetitionInfo repetition) throws Exception {
    killAfter(new Random(repetition.getCurrentRepetition()).nextInt(lines().size()));
  }

  private void killAfter(int readings) throws Exception {
    Path file = folder.resolve("workshop.db");
    run("import", "docs/examples/25-014.json", "--workshop", file.toString());
    try (Lateness lateness = Lateness.watch();
        PseudoTerminal port = PseudoTerminal.heldOpen();
        PlayedHead head = new PlayedHead(port, lines(), PER_SECOND).start()) {
      Process program = record(file, port.path());
      Waiting.until(
          () -> head.sent() >= readings || !program.isAlive(), () -> "sent " + head.sent());
      head.close(); // what it has sent by now can be counted
      program.toHandle().destroyForcibly(); // kill -9; what it has said can still be read
      assertTrue(program.waitFor(60, TimeUnit.SECONDS));
      String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      long unread = port.takeUnread().chars().filter(c -> c == '\n').count();
      int consumed = (int) (head.sent() - unread);
      check(file, said, consumed, lateness.worstS());
    }
  }

  private static void check(Path file, String said, int consumed, double latenessS)
      throws Exception {
    List<JsonNode> salvaged = run("salvage", "--workshop", file.toString(), "--json");
    assertEquals(List.of(), run("salvage", "--workshop", file.toString(), "--json"));
    try (Workshop workshop = Workshop.open(file, new Keeper(InstantSource.system(), "test"))) {
      List<Run> runs = workshop.runs().of(workshop.blanks().require("25-014"));
      assertTrue(runs.get(0).counts(), "the run that was there before");
      if (said.endsWith("\n")) {
        JsonNode answer = JSON.readTree(said);
        assertEquals(List.of(), salvaged, "it was closed");
        assertEquals(answer.get("run").asLong(), runs.get(1).id());
        assertEquals(
            answer.get("modulusMPa"),
            JSON.readTree(runs.get(1).outcome().answer()).get("modulusMPa"));
        return;
      }
      int kept = 0;
      if (runs.size() > 1) {
        String wire =
            new String(workshop.runs().wire(runs.get(1)), StandardCharsets.US_ASCII)
                .replaceAll("SAGWRIGHT[^\n]*\n", "");
        String sent = text(lines());
        assertTrue(sent.startsWith(wire), "what is kept is what was sent, without a hole");
        kept = (int) wire.chars().filter(c -> c == '\n').count();
        if (runs.get(1).ending().equals(Ending.LOAD_OFF.inWords())) {
          assertTrue(runs.get(1).counts(), "what came after its end is no part of it");
          return;
        }
      }
      double most = PER_SECOND * (MOST_LOST_S + LATENESSES * Math.max(LEAST_LATENESS_S, latenessS));
      assertTrue(
          consumed - kept <= most,
          "lost " + (consumed - kept) + " readings of " + consumed + ", late " + latenessS + " s");
    }
  }

  private static String text(List<byte[]> lines) {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(new String(line, StandardCharsets.US_ASCII)));
    return text.toString();
  }

  /** Rest, up to 19 N, down and rest, at 100 readings a second by the head's own time. */
  private static List<byte[]> lines() {
    List<byte[]> lines = new ArrayList<>();
    for (int i = 0; i < 800; i++) {
      double loadN = Math.max(0, Math.min(19, Math.min(i - 150, 600 - i) / 10.0));
      int counts = 900 + (int) Math.round(loadN / 2.5e-5) + i * 7 % 50;
      long steps = 500 + InventedBench.CALIBRATION.gauge().steps(loadN / 4.1);
      lines.add(WireFormat.bytes(new Reading(i, i * 10_000L, counts, steps, 0)));
    }
    return lines;
  }

  private static Process record(Path workshop, String port) throws Exception {
    List<String> command =
        List.of(
            "record",
            "--port",
            port,
            "--workshop",
            workshop.toString(),
            "--blank",
            "25-014",
            "--calibration",
            "docs/examples/calibration.json",
            "--setup",
            "docs/examples/setup.json",
            "--json");
    return ChildProgram.start(List.of(), Sagwright.class.getName(), command);
  }

  private static List<JsonNode> run(String... args) throws Exception {
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
