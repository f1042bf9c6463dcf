package sagwright.screen;

import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;

/**
 * Watches that the event thread is never busy for long: asks it twenty times a second to answer,
 * and where it does not in time, logs where it is. For tests and for the practice bench.
 */
public final class StallWatch implements AutoCloseable {
  private static final long EVERY_MS = 50;

  private final Duration longest;
  private final AtomicLong worstNanos = new AtomicLong();
  private final Thread eventThread;
  private final Thread watcher = new Thread(this::watch, "stall-watch");
  private volatile boolean isClosed;

  private StallWatch(Duration longest, Thread eventThread) {
    this.longest = longest;
    this.eventThread = eventThread;
    watcher.setDaemon(true);
  }

  /**
   * Begins to watch; called on the event thread.
   *
   * @param longest a wait for the event thread above this is logged with its stack
   */
  public static StallWatch begin(Duration longest) {
    if (!SwingUtilities.isEventDispatchThread()) {
      throw new IllegalStateException("begin to watch on the event thread");
    }
    StallWatch watch = new StallWatch(longest, Thread.currentThread());
    watch.watcher.start();
    return watch;
  }

  /** The longest that the event thread has let anybody wait so far. */
  public Duration worst() {
    return Duration.ofNanos(worstNanos.get());
  }

  private void watch() {
    try {
      while (!isClosed) {
        AtomicLong answered = new AtomicLong();
        long asked = System.nanoTime();
        SwingUtilities.invokeLater(() -> answered.set(System.nanoTime()));
        boolean isLogged = false;
        while (answered.get() == 0 && !isClosed) {
          Thread.sleep(1);
          if (!isLogged && System.nanoTime() - asked > longest.toNanos()) {
            log();
            isLogged = true;
          }
        }
        if (answered.get() != 0) {
          long waited = answered.get() - asked;
          worstNanos.accumulateAndGet(waited, Math::max);
        }
        Thread.sleep(EVERY_MS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void log() {
    String where =
        Arrays.stream(eventThread.getStackTrace())
            .map(frame -> System.lineSeparator() + "  at " + frame)
            .collect(Collectors.joining());
    System.getLogger(StallWatch.class.getName())
        .log(System.Logger.Level.WARNING, "the window stands still: " + where);
  }

  @Override
  public void close() {
    isClosed = true;
    watcher.interrupt();
  }
}
