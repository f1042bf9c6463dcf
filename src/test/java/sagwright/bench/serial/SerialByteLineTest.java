package sagwright.bench.serial;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.ByteLine;
import sagwright.bench.ByteLineContract;
import sagwright.bench.LineLostException;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;
import sagwright.bench.PlayedHead;
import sagwright.bench.PseudoTerminal;
import sagwright.bench.Reading;
import sagwright.bench.Waiting;
import sagwright.bench.WireFormat;

class SerialByteLineTest extends ByteLineContract {
  private final PseudoTerminal terminal = PseudoTerminal.heldOpen();
  private final PlayedHead head = new PlayedHead(terminal, lines(), 200).start();

  private static List<byte[]> lines() {
    List<byte[]> lines = new ArrayList<>();
    for (int i = 0; i < 3000; i++) {
      lines.add(WireFormat.bytes(new Reading(i, 5_000L * i, i, (long) i, 0)));
    }
    return lines;
  }

  @Override
  protected LineOpener head() {
    return new SerialLineOpener(terminal.path(), LineOpener.ORDINARY_BAUD);
  }

  @Override
  protected void pullPlug() {
    terminal.close();
  }

  @Override
  protected void endHead() {
    head.close();
    terminal.close();
  }

  @Test
  void allBytesPassBothWaysAndNothingIsEchoed() throws Exception {
    try (PseudoTerminal far = PseudoTerminal.open();
        ByteLine near = new SerialLineOpener(far.path(), 921_600).open()) {
      byte[] all = new byte[256];
      for (int i = 0; i < all.length; i++) {
        all[i] = (byte) i;
      }
      near.write(all);
      assertArrayEquals(all, take(far, all.length));
      far.write(all);
      assertArrayEquals(all, take(near, all.length));
      assertEquals(0, far.read(new byte[10], Duration.ofMillis(20)));
    }
  }

  private static byte[] take(ByteLine line, int count) throws LineLostException {
    ByteArrayOutputStream got = new ByteArrayOutputStream();
    byte[] buffer = new byte[count];
    long end = System.nanoTime() + Waiting.DEADLINE.toNanos();
    while (got.size() < count && System.nanoTime() < end) {
      got.write(buffer, 0, line.read(buffer, Duration.ofMillis(100)));
    }
    return got.toByteArray();
  }

  @Test
  void whatAHeadSentWhileTheProgramWasStartingIsRead() throws Exception {
    try (PseudoTerminal far = PseudoTerminal.heldOpen()) {
      far.write("early\n".getBytes(StandardCharsets.US_ASCII));
      try (ByteLine near = new SerialLineOpener(far.path(), 115_200).open()) {
        assertEquals("early\n", new String(take(near, 6), StandardCharsets.US_ASCII));
      }
    }
  }

  @Test
  void aPortThatIsInUseIsSaid() throws Exception {
    try (ByteLine first = head().open()) {
      LineNotOpenedException e = assertThrows(LineNotOpenedException.class, () -> head().open());
      assertTrue(e.getMessage().contains("in use by another program"), e.getMessage());
      assertTrue(e.getMessage().contains(first.description()), e.getMessage());
    }
  }

  @Test
  void aPortThatIsNotThereIsSaid(@TempDir Path folder) {
    for (String path : List.of("/dev/ttyNOTHING9", folder.resolve("none").toString())) {
      LineNotOpenedException e =
          assertThrows(
              LineNotOpenedException.class, () -> new SerialLineOpener(path, 115_200).open());
      assertTrue(e.getMessage().startsWith("there is no port " + path), e.getMessage());
    }
  }

  @Test
  void noRightsComeWithTheWayToGetThem() {
    String words = OpeningFailure.inWords("/dev/null", 13, "Linux");
    assertTrue(words.contains("dialout") && words.contains("log out and in again"), words);
    assertTrue(OpeningFailure.inWords("COM3", 5, "Windows 11").contains("in use"));
    assertTrue(OpeningFailure.inWords("COM3", 2, "Windows 11").startsWith("there is no port"));
    assertTrue(OpeningFailure.inWords("/dev/null", 16, "Mac OS X").contains("in use"));
    assertTrue(OpeningFailure.inWords("/dev/null", 99, "Linux").contains("99"));
  }

  @Test
  void aLinkIsFollowedAnewAtEachOpening(@TempDir Path folder) throws Exception {
    Path link = folder.resolve("bench-head");
    LineOpener opener = new SerialLineOpener(link.toString(), 115_200);
    try (PseudoTerminal old = PseudoTerminal.open();
        PseudoTerminal anew = PseudoTerminal.open()) {
      old.putAt(link);
      ByteLine first = opener.open();
      anew.putAt(link);
      old.close();
      assertThrows(LineLostException.class, () -> take(first, 1));
      first.close();
      try (ByteLine second = opener.open()) {
        anew.write(new byte[] {'x'});
        assertEquals(1, take(second, 1).length);
      }
    }
  }

  @Test
  void aPortOfWhichOnlyThePathIsKnownIsFoundThere(@TempDir Path folder) throws Exception {
    Path link = folder.resolve("bench-head");
    PortIdentity identity = SerialPorts.identityAt(link.toString());
    assertEquals(PortIdentity.atPath(link.toString()), identity);
    LineOpener opener = new FoundPortOpener(identity, 115_200);
    assertThrows(LineNotOpenedException.class, opener::open);
    terminal.putAt(link);
    opener.open().close();
  }

  @Test
  void aHeadThatIsNotPluggedInIsSaidBeforeAnyOtherPortIsTried() {
    PortIdentity gone = new PortIdentity("A1", 0x2341, 0x0043, "USB", terminal.path());
    LineNotOpenedException e =
        assertThrows(LineNotOpenedException.class, () -> new FoundPortOpener(gone, 115_200).open());
    assertTrue(e.getMessage().contains("is not plugged in"), e.getMessage());
  }

  @Test
  void aWriteThatIsHeldForEverIsFreedByClosing() throws Exception {
    try (PseudoTerminal far = PseudoTerminal.heldOpen()) {
      ByteLine near = new SerialLineOpener(far.path(), 115_200).open();
      CompletableFuture<Throwable> ended = new CompletableFuture<>();
      Thread writer =
          new Thread(
              () -> {
                try {
                  near.write(new byte[500_000]);
                  ended.complete(null);
                } catch (LineLostException e) {
                  ended.complete(e);
                }
              });
      writer.setDaemon(true);
      writer.start();
      Waiting.until(() -> writer.getState() == Thread.State.RUNNABLE, () -> "it writes");
      assertThrows(TimeoutException.class, () -> ended.get(300, TimeUnit.MILLISECONDS));
      near.close();
      assertEquals(LineLostException.class, Waiting.on(ended).getClass());
    }
  }
}
