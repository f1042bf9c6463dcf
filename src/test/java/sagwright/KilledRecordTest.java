package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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
import sagwright.bench.InventedBench;
import sagwright.bench.PlayedHead;
import sagwright.bench.PseudoTerminal;
import sagwright.bench.Reading;
import sagwright.bench.Waiting;
import sagwright.bench.WireFormat;

/**
 * The real {@code record} on a real port, killed as a power cut would: nothing that was said to be
 * kept is lost, and of a run that went on no more than its last tenth of a second.
 */
class KilledRecordTest {
  private static final int PER_SECOND = 400;

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
    Path file = KeptRun.workshopIn(folder);
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
      if (said.endsWith("\n")) {
        checkAnswered(file, new ObjectMapper().readTree(said));
      } else {
        KeptRun.check(file, head.sent() - port.takeUnreadLines(), PER_SECOND, lateness.worstS());
      }
    }
  }

  private static void checkAnswered(Path file, JsonNode answer) throws Exception {
    String workshop = file.toString();
    assertEquals(List.of(), KeptRun.run("salvage", "--workshop", workshop, "--json"));
    JsonNode record =
        KeptRun.run("blank", "--workshop", workshop, "--blank", "25-014", "--json").get(0);
    assertEquals(answer.get("run"), record.at("/runs/1/run"));
    assertEquals(answer.get("modulusMPa"), record.at("/runs/1/modulusMPa"));
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
}
