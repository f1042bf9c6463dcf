package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.serial.SerialLineOpener;

/** A bench that is on for a day, whose plug is pulled and put back again and again. */
class HeadSoakTest {
  private static final HeadTiming QUICK = InventedBench.QUICK;

  @TempDir Path folder;

  @Test
  @Timeout(120)
  void pulledPlugsLoseNothingButWhatWasCut() throws Exception {
    soak(5, 230, 4600);
  }

  /**
   * What an hour at 230 readings a second brings, at the pace of 1,000 a second: a quarter hour.
   */
  @Test
  @Tag("long")
  @Timeout(3600)
  void anHourOfReadingsAndAHundredPulledPlugsLoseNothingAndMemoryStaysFlat() throws Exception {
    soak(5, 8_280, 1000);
    long before = usedBytes();
    soak(95, 8_280, 1000);
    long grown = usedBytes() - before;
    assertTrue(grown < 8_000_000, "grew by " + grown + " bytes");
  }

  private static long usedBytes() {
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  private void soak(int pulls, int linesEach, double linesPerSecond) throws Exception {
    Path link = folder.resolve("bench-head");
    PseudoTerminal terminal = PseudoTerminal.heldOpen();
    terminal.putAt(link);
    LineOpener opener = new SerialLineOpener(link.toString(), 115_200);
    try (HeadSession session = HeadSession.lasting(opener, QUICK, snapshot -> {})) {
      for (int pull = 0; pull < pulls; pull++) {
        String at = "pull " + pull;
        List<byte[]> lines =
            new Scene(230, pull)
                .rest((linesEach - 0.5) / 230).readings().stream().map(WireFormat::bytes).toList();
        PlayedHead head = new PlayedHead(terminal, lines, linesPerSecond).start();
        Waiting.until(
            () ->
                session.snapshot().link() == LinkState.READING
                    && session.snapshot().line().readings() >= lines.size(),
            () -> at + ": " + session.snapshot());
        assertEquals(new LineStatistics(linesEach, 0, 0, 0), session.snapshot().line(), at);
        PseudoTerminal next = PseudoTerminal.heldOpen();
        head.close();
        terminal.close();
        Waiting.until(
            () -> session.snapshot().link() != LinkState.READING,
            () -> at + ": " + session.snapshot());
        next.putAt(link);
        terminal = next;
      }
    } finally {
      terminal.close();
    }
  }
}
