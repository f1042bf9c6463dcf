package sagwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What every byte line to a bench head does, whatever it is made of. */
@Timeout(60)
public abstract class ByteLineContract {
  private static final Duration READ = Duration.ofMillis(100);

  private ByteLine line;

  /** A way to a head that answers *IDN?, INIT and ABOR. */
  protected abstract LineOpener head();

  protected abstract void pullPlug();

  /** Ends whatever the head is made of. */
  protected abstract void endHead();

  private ByteLine opened() throws LineNotOpenedException {
    line = head().open();
    return line;
  }

  @AfterEach
  void closeAll() {
    if (line != null) {
      line.close();
    }
    endHead();
  }

  private static void send(ByteLine line, String command) throws LineLostException {
    line.write((command + "\n").getBytes(StandardCharsets.US_ASCII));
  }

  private static void readInto(ByteLine line, WireReader reader) throws LineLostException {
    byte[] buffer = new byte[1000];
    reader.accept(buffer, line.read(buffer, READ));
  }

  private static void readUntil(
      ByteLine line, WireReader reader, java.util.function.BooleanSupplier done)
      throws LineLostException {
    long end = System.nanoTime() + Waiting.DEADLINE.toNanos();
    while (!done.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, "it never came");
      readInto(line, reader);
    }
  }

  @Test
  void answersWhoItIsThenReadsThenStops() throws Exception {
    ByteLine open = opened();
    Heard heard = new Heard();
    WireReader reader = WireReader.fromOpening(heard);
    send(open, "*IDN?");
    readUntil(open, reader, () -> !heard.answers.isEmpty());
    assertTrue(heard.answers.get(0).identity().isPresent());
    assertEquals(0, heard.readings.size(), "no reading before INIT");
    send(open, "INIT");
    readUntil(open, reader, () -> heard.readings.size() >= 30);
    assertEquals(0, heard.refusals.size());
    assertEquals(0, heard.gaps.size());
    send(open, "ABOR");
    send(open, "SYST:ERR?");
    readUntil(open, reader, () -> heard.answers.size() == 2);
    assertEquals("0,\"No error\"", heard.answers.get(1).text());
    int before = heard.readings.size();
    assertEquals(0, open.read(new byte[10], READ), "silent after ABOR");
    assertEquals(before, heard.readings.size());
  }

  @Test
  void aReadThatNothingComesForEndsAtItsDeadline() throws Exception {
    ByteLine open = opened();
    long start = System.nanoTime();
    assertEquals(0, open.read(new byte[10], READ));
    double waitedS = (System.nanoTime() - start) / 1e9;
    assertTrue(waitedS > 0.05 && waitedS < 5, "waited " + waitedS + " s");
  }

  @Test
  void aSmallBufferLosesNothing() throws Exception {
    ByteLine open = opened();
    send(open, "*IDN?");
    StringBuilder got = new StringBuilder();
    byte[] three = new byte[3];
    long end = System.nanoTime() + Waiting.DEADLINE.toNanos();
    while (got.indexOf("\n") < 0 && System.nanoTime() < end) {
      int count = open.read(three, READ);
      got.append(new String(three, 0, count, StandardCharsets.US_ASCII));
    }
    assertTrue(HeadAnswer.isOne(got.toString().strip()), got.toString());
  }

  @Test
  void aPulledPlugIsSaidByEveryLaterRead() throws Exception {
    ByteLine open = opened();
    Heard heard = new Heard();
    WireReader reader = WireReader.fromOpening(heard);
    send(open, "INIT");
    readUntil(open, reader, () -> heard.readings.size() >= 5);
    pullPlug();
    LineLostException lost =
        assertThrows(LineLostException.class, () -> readUntil(open, reader, () -> false));
    assertTrue(lost.getMessage().contains("plug"), lost.getMessage());
    assertThrows(LineLostException.class, () -> open.read(new byte[10], READ));
    assertThrows(LineLostException.class, () -> send(open, "*IDN?"));
  }

  @Test
  void closingFromAnotherThreadEndsAWaitingRead() throws Exception {
    ByteLine open = opened();
    CompletableFuture<Throwable> ended = new CompletableFuture<>();
    Thread reader =
        new Thread(
            () -> {
              try {
                while (true) {
                  open.read(new byte[10], Duration.ofSeconds(20));
                }
              } catch (LineLostException e) {
                ended.complete(e);
              }
            });
    reader.start();
    Waiting.until(
        () -> reader.getState() != Thread.State.NEW && reader.getStackTrace().length > 2,
        () -> "the reader waits");
    open.close();
    assertEquals(LineLostException.class, Waiting.on(ended).getClass());
    reader.join();
  }

  @Test
  void aClosedLineSaysSoAndCanBeClosedAgain()
      throws LineNotOpenedException, InterruptedException, ExecutionException, TimeoutException {
    ByteLine open = opened();
    open.close();
    open.close();
    assertThrows(LineLostException.class, () -> open.read(new byte[10], READ));
    assertThrows(LineLostException.class, () -> send(open, "INIT"));
  }

  @Test
  void itCanBeOpenedAgainAfterItWasClosed() throws Exception {
    opened().close();
    ByteLine again = opened();
    Heard heard = new Heard();
    send(again, "*IDN?");
    WireReader reader = WireReader.fromOpening(heard);
    readUntil(again, reader, () -> !heard.answers.isEmpty());
    assertTrue(again.description().length() > 3);
  }
}
