package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.InventedBench;
import sagwright.bench.PseudoTerminal;
import sagwright.bench.ToldHead;
import sagwright.bench.Waiting;

/**
 * The real window on a real port, killed in the middle of a test: what was read is kept, as {@link
 * KilledRecordTest} has it. Outside the ordinary run.
 */
@Tag("long")
class KilledWindowTest {
  private static final int PER_SECOND = 200;

  @TempDir Path folder;

  @RepeatedTest(30)
  void aWindowKilledInATestKeepsAllButTheLastTenthOfASecond(RepetitionInfo repetition)
      throws Exception {
    int readings = new Random(repetition.getCurrentRepetition()).nextInt(8 * PER_SECOND);
    Path file = KeptRun.workshopIn(folder);
    try (Lateness lateness = Lateness.watch();
        PseudoTerminal port = PseudoTerminal.heldOpen();
        ToldHead head = new ToldHead(port, InventedBench.CALIBRATION, PER_SECOND, 4.1).start()) {
      Process program = window(file, port.path());
      try (BufferedReader says =
          new BufferedReader(
              new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
        assertEquals("begun", says.readLine());
        int begun = head.sent();
        assertEquals("load", says.readLine());
        head.load(19, 8);
        Waiting.until(
            () -> {
              if (head.isAt(19)) {
                head.load(0, 8);
              }
              return head.sent() >= begun + readings;
            },
            () -> "sent " + head.sent());
        head.close(); // what it has sent by now can be counted
        program.toHandle().destroyForcibly(); // kill -9
        assertTrue(program.waitFor(60, TimeUnit.SECONDS));
      }
      KeptRun.check(file, head.sent() - port.takeUnreadLines(), PER_SECOND, lateness.worstS());
    }
  }

  private static Process window(Path workshop, String port) throws Exception {
    List<String> command =
        List.of(
            "window",
            "--workshop",
            workshop.toString(),
            "--port",
            port,
            "--calibration",
            "docs/examples/calibration.json");
    return ChildProgram.start(paintedIntoMemory(), WindowToBeKilled.class.getName(), command);
  }

  /** What the build gives to its window tests. */
  private static List<String> paintedIntoMemory() throws Exception {
    Matcher options =
        Pattern.compile("<cacio.argLine>(.*)</cacio.argLine>")
            .matcher(Files.readString(Path.of("pom.xml")));
    assertTrue(options.find());
    return List.of(options.group(1).split(" "));
  }
}
