package sagwright.screen;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;

/**
 * Watches that the event thread is never busy for long: times each event that it handles, and where
 * one takes too long, logs where it is. For tests and for the practice bench.
 */
public final class StallWatch implements AutoCloseable {
  private static final long LOOK_EVERY_MS = 10;

  private final Duration longest;
  private final Thread eventThread;
  private final TimedQueue queue = new TimedQueue();
  private final Thread watcher = new Thread(this::watch, "stall-watch");
  private final AtomicLong worstNanos = new AtomicLong();
  private final AtomicLong worstOwnNanos = new AtomicLong();
  private final AtomicLong events = new AtomicLong();
  private volatile long handlingSinceNanos;
  private volatile boolean isHandling;

  private StallWatch(Duration longest, Thread eventThread) {
    this.longest = longest;
    this.eventThread = eventThread;
    watcher.setDaemon(true);
  }

  /**
   * Begins to watch; called on the event thread.
   *
   * @param longest an event that takes longer is logged with its stack
   */
  public static StallWatch begin(Duration longest) {
    if (!SwingUtilities.isEventDispatchThread()) {
      throw new IllegalStateException("begin to watch on the event thread");
    }
    ManagementFactory.getThreadMXBean().setThreadContentionMonitoringEnabled(true);
    StallWatch watch = new StallWatch(longest, Thread.currentThread());
    EventQueue before = Toolkit.getDefaultToolkit().getSystemEventQueue();
    before.push(watch.queue);
    takeWakeUpCallFrom(before);
    watch.watcher.start();
    return watch;
  }

  /** The longest that one event has taken so far, by the clock on the wall. */
  public Duration worst() {
    return Duration.ofNanos(worstNanos.get());
  }

  /**
   * The longest that one event has taken by its own doing: what it reckoned, and what it waited for
   * a lock, a result or a while. Not in it is the time for which the machine did not let the event
   * thread run, because others had its processors or memory was being tidied: that says nothing of
   * this program, and on a busy machine it may be any time.
   */
  public Duration worstOwn() {
    return Duration.ofNanos(worstOwnNanos.get());
  }

  /** How many events were handled. */
  public long events() {
    return events.get();
  }

  /**
   * Changing queues leaves an empty event in the old one, to wake up an event thread that waits for
   * the next. It does not wait where it changes them itself: the event would lie there for good,
   * and who waits until all events are handled, as a test's robot does, would wait for nothing.
   */
  private static void takeWakeUpCallFrom(EventQueue old) {
    try {
      while (SwingUtilities.isEventDispatchThread() && old.peekEvent() != null) {
        old.getNextEvent();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The queue of the events, each timed as it is handled. */
  private final class TimedQueue extends EventQueue {
    private int depth;
    private boolean hadInner;
    private volatile boolean isGivenBack;

    @Override
    public void postEvent(AWTEvent event) {
      if (isGivenBack) { // from one who still knows this queue: here nobody would ever handle it
        Toolkit.getDefaultToolkit().getSystemEventQueue().postEvent(event);
      } else {
        super.postEvent(event);
      }
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
      depth++;
      hadInner = false;
      Doing before = Doing.of(eventThread);
      long begun = System.nanoTime();
      handlingSinceNanos = begun;
      isHandling = true;
      try {
        super.dispatchEvent(event);
      } finally {
        isHandling = false;
        if (!hadInner) { // one that shows a dialog waits for the maker, and handles others
          // meanwhile
          worstNanos.accumulateAndGet(System.nanoTime() - begun, Math::max);
          worstOwnNanos.accumulateAndGet(Doing.of(eventThread).nanosSince(before), Math::max);
          events.incrementAndGet();
        }
        depth--;
        hadInner = depth > 0;
      }
    }

    void giveBack() {
      pop();
      isGivenBack = true;
      takeWakeUpCallFrom(this);
    }
  }

  /** What a thread has done so far. */
  private record Doing(long reckonedNanos, long waitedMs) {
    static Doing of(Thread thread) {
      ThreadMXBean threads = ManagementFactory.getThreadMXBean();
      ThreadInfo info = threads.getThreadInfo(thread.getId());
      long waitedMs = info == null ? 0 : info.getBlockedTime() + info.getWaitedTime();
      return new Doing(threads.getThreadCpuTime(thread.getId()), waitedMs);
    }

    long nanosSince(Doing before) {
      return reckonedNanos - before.reckonedNanos + (waitedMs - before.waitedMs) * 1_000_000;
    }
  }

  private void watch() {
    try {
      long logged = 0;
      while (true) {
        Thread.sleep(LOOK_EVERY_MS);
        long since = handlingSinceNanos;
        if (isHandling && since != logged && System.nanoTime() - since > longest.toNanos()) {
          logged = since;
          log();
        }
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
    watcher.interrupt();
    queue.giveBack();
  }
}
