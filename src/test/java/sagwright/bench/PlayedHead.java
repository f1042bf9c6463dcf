package sagwright.bench;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A head of few manners on the far side of a line, on a thread of its own: answers *IDN?,
 * SYST:ERR?, INIT and ABOR, and sends the lines it was given. What a test wants otherwise it
 * overrides.
 */
public class PlayedHead implements AutoCloseable {
  private final ByteLine line;
  private final List<byte[]> lines;
  private final double linesPerSecond;
  private final Thread thread = new Thread(this::live, "played-head");
  private final StringBuilder heard = new StringBuilder();
  private final AtomicInteger sent = new AtomicInteger();
  private volatile boolean isEnding;
  protected volatile boolean isMeasuring;

  /**
   * @param lines what it sends from INIT on, over and over with nothing changed after their end
   */
  public PlayedHead(ByteLine line, List<byte[]> lines, double linesPerSecond) {
    this.line = line;
    this.lines = lines;
    this.linesPerSecond = linesPerSecond;
    thread.setDaemon(true);
  }

  public PlayedHead start() {
    thread.start();
    return this;
  }

  /** How many of its lines it has sent. */
  public int sent() {
    return sent.get();
  }

  /** The commands it was sent. */
  public String heard() {
    synchronized (heard) {
      return heard.toString();
    }
  }

  /** What it does with a command; the answer, or "" for none. */
  protected String answer(String command) {
    switch (command) {
      case "*IDN?":
        return "SAGWRIGHT,played,7,0.1\n";
      case "SYST:ERR?":
        return "0,\"No error\"\n";
      case "INIT":
        isMeasuring = true;
        return "";
      case "ABOR":
        isMeasuring = false;
        return "";
      default:
        return "";
    }
  }

  private void live() {
    StringBuilder command = new StringBuilder();
    byte[] buffer = new byte[64];
    try {
      while (!isEnding) {
        boolean sends = isMeasuring && sent.get() < lines.size();
        int count = line.read(buffer, Duration.ofMillis(sends ? 0 : 5));
        obey(new String(buffer, 0, count, StandardCharsets.US_ASCII), command);
        if (sends && isMeasuring) {
          sendSome();
        }
      }
    } catch (LineLostException e) {
      return; // the plug is pulled: a head has nothing more to do
    }
  }

  private void obey(String bytes, StringBuilder command) throws LineLostException {
    for (char c : bytes.toCharArray()) {
      if (c != '\n') {
        command.append(c);
        continue;
      }
      synchronized (heard) {
        heard.append(command).append('\n');
      }
      String answer = answer(command.toString().strip().toUpperCase(Locale.ROOT));
      command.setLength(0);
      if (!answer.isEmpty()) {
        line.write(answer.getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  /** The lines of some ten milliseconds, then a pause of that. */
  private void sendSome() throws LineLostException {
    int burst = (int) Math.max(1, linesPerSecond / 100);
    for (int i = 0; i < burst && sent.get() < lines.size(); i++) {
      line.write(lines.get(sent.get()));
      sent.incrementAndGet();
    }
    try {
      Thread.sleep(Math.max(1, Math.round(1000 * burst / linesPerSecond)));
    } catch (InterruptedException e) {
      isEnding = true;
    }
  }

  @Override
  public void close() {
    isEnding = true;
    thread.interrupt();
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
