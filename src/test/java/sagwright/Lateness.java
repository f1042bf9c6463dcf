package sagwright;

import java.util.concurrent.locks.LockSupport;

/** How long a thread that is ready to run had to wait for a processor, at the worst so far. */
public final class Lateness implements AutoCloseable {
  private static final long NAP_NANOS = 5_000_000;

  private final Thread thread = new Thread(this::nap, "lateness");
  private volatile long worstNanos;
  private volatile boolean isEnding;

  private Lateness() {
    thread.setDaemon(true);
  }

  public static Lateness watch() {
    Lateness lateness = new Lateness();
    lateness.thread.start();
    return lateness;
  }

  public double worstS() {
    return worstNanos / 1e9;
  }

  private void nap() {
    while (!isEnding) {
      long begun = System.nanoTime();
      LockSupport.parkNanos(NAP_NANOS);
      worstNanos = Math.max(worstNanos, System.nanoTime() - begun - NAP_NANOS);
    }
  }

  @Override
  public void close() {
    isEnding = true;
  }
}
