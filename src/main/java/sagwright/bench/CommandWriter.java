package sagwright.bench;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * Sends commands on a thread of its own that can be given up: a head that takes no bytes can hold a
 * write for ever.
 */
final class CommandWriter {
  private final ByteLine line;
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread writer = new Thread(task, "head-writer");
            writer.setDaemon(true);
            return writer;
          });
  private Future<?> pending;

  CommandWriter(ByteLine line) {
    this.line = line;
  }

  /** Sends the command; where the head still has not taken the one before, this one is let go. */
  void send(String command) {
    if (pending == null || pending.isDone()) {
      byte[] bytes = (command + "\n").getBytes(StandardCharsets.US_ASCII);
      pending =
          thread.submit(
              () -> {
                line.write(bytes);
                return null;
              });
    }
  }

  /** Gives the last command a little time to go out, then gives the thread up. */
  void close(Duration most) {
    thread.shutdown();
    try {
      if (!thread.awaitTermination(most.toMillis(), TimeUnit.MILLISECONDS)) {
        thread.shutdownNow();
      }
    } catch (InterruptedException e) {
      thread.shutdownNow();
      Thread.currentThread().interrupt();
    }
  }
}
