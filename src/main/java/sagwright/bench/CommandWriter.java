package sagwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

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

  /** Gives the thread up; a write that is held ends once its line is closed. */
  void close() {
    thread.shutdownNow();
  }
}
