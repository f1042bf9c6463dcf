package sagwright.bench;

import java.time.Duration;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * The program's side of a bench head: opens its line, asks for readings, leads tests, and finds the
 * line again by itself after it was lost. Everything happens on one thread of its own, named
 * head-reader; the methods here return at once (but {@link #close}, which has a deadline) and may
 * be called from any thread.
 */
public final class HeadSession implements AutoCloseable {
  private static final Duration CLOSE_DEADLINE = Duration.ofSeconds(2);

  private final LineOpener opener;
  private final HeadTiming timing;
  private final boolean reopens;
  private final Consumer<BenchSnapshot> follower;
  private final Queue<Runnable> requests = new ConcurrentLinkedQueue<>();
  private final CountDownLatch closing = new CountDownLatch(1);
  private final Thread thread = new Thread(this::live, "head-reader");
  private final LineHealth health = new LineHealth();
  private final TestBay bay = new TestBay(); // of the head-reader thread alone
  private volatile BenchSnapshot snapshot;
  private volatile HeadLink link;
  private volatile Exception whyEnded;

  private HeadSession(
      LineOpener opener, HeadTiming timing, boolean reopens, Consumer<BenchSnapshot> follower) {
    this.opener = opener;
    this.timing = timing;
    this.reopens = reopens;
    this.follower = follower;
    this.snapshot = BenchSnapshot.before(opener.description());
    thread.setDaemon(true);
  }

  /**
   * A session that lasts: a line that cannot be opened, or is lost, is tried again until the
   * session is closed.
   *
   * @param follower is given each new snapshot, on the head-reader thread: so it must return at
   *     once
   */
  public static HeadSession lasting(
      LineOpener opener, HeadTiming timing, Consumer<BenchSnapshot> follower) {
    HeadSession session = new HeadSession(opener, timing, true, follower);
    session.startOnce();
    return session;
  }

  /**
   * A session for one test, opened when the test is begun so that it gets every byte: a line that
   * cannot be opened fails the test with its {@link LineNotOpenedException}, one that is lost ends
   * it, and neither is tried again.
   */
  public static HeadSession once(
      LineOpener opener, HeadTiming timing, Consumer<BenchSnapshot> follower) {
    return new HeadSession(opener, timing, false, follower);
  }

  /** The newest state, for a screen to draw as often as it likes. */
  public BenchSnapshot snapshot() {
    return snapshot;
  }

  /** How well the line does, over its last seconds. */
  public HealthReport health(Calibration calibration) {
    return health.report(calibration);
  }

  /** What load and gauge show at this moment, in their own counts. */
  public SettledCounts settled() {
    return health.settled();
  }

  /**
   * Begins a test, which leads itself from here on. Where no readings come yet it waits for them.
   *
   * @param journal is given every line of the run as it comes, before anything is made of it
   * @param most after so long the test ends, {@link Ending#TIMED_OUT}
   * @return the run, once it has ended; fails with {@link IllegalStateException} where another test
   *     runs or the session is over, with {@link LineNotOpenedException} as {@link #once} says. It
   *     is completed on the head-reader thread: what takes time belongs on another ({@code
   *     thenApplyAsync}).
   */
  public CompletableFuture<RecordedRun> begin(TestPlan plan, LineJournal journal, Duration most) {
    CompletableFuture<RecordedRun> outcome = new CompletableFuture<>();
    RunningTest test = new RunningTest(plan, journal, most, outcome);
    requests.add(() -> bay.begin(test, outcome));
    startOnce();
    Exception ended = whyEnded;
    if (ended != null) {
      outcome.completeExceptionally(ended);
    }
    return outcome;
  }

  /**
   * Ends the test that runs, if one does: {@link Ending#ENDED_BY_HAND} in the ordinary way, {@link
   * Ending#BROKEN_OFF} where it is to be set aside.
   */
  public void end(Ending how) {
    requests.add(() -> bay.end(how));
  }

  private synchronized void startOnce() {
    if (thread.getState() == Thread.State.NEW) {
      thread.start();
    }
  }

  private void live() {
    Exception why = new IllegalStateException("the line is closed");
    try {
      while (closing.getCount() > 0) {
        why = openAndRead(why);
        if (!reopens || closing.await(timing.reopen().toMillis(), TimeUnit.MILLISECONDS)) {
          break;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      whyEnded = why; // before the last requests are served: none can slip in behind
      serveRequests();
      bay.fail(why);
      if (closing.getCount() == 0) {
        publish(LinkState.CLOSED, opener.description() + " is closed");
      }
    }
  }

  /**
   * One line from its opening to its end.
   *
   * @return why a test that is begun later cannot run, where the line is not tried again
   */
  private Exception openAndRead(Exception otherwise) {
    try {
      LineMonitor monitor = new LineMonitor();
      link = new HeadLink(opener.open(), timing, monitor, new WireTee(monitor, health, bay));
      while (closing.getCount() > 0) {
        serveRequests();
        link.pump();
        publish(monitor.snapshot(link.state(), link.inWords(), bay.snapshot()));
        bay.handOverWhenOver();
      }
      bay.end(Ending.LINE_LOST);
      bay.handOverWhenOver();
      link.close();
    } catch (LineNotOpenedException e) {
      serveRequests();
      bay.handOverWhenOver();
      publish(LinkState.NOT_OPENED, e.getMessage());
      return e;
    } catch (HeadSilentException e) {
      lose(Ending.HEAD_SILENT, e.getMessage());
    } catch (LineLostException e) {
      lose(Ending.LINE_LOST, e.getMessage());
    } catch (RuntimeException e) {
      System.getLogger(HeadSession.class.getName())
          .log(System.Logger.Level.ERROR, "the head-reader stumbled", e);
      bay.fail(e);
      lose(
          Ending.LINE_LOST,
          "the line to " + opener.description() + " was closed after a fault of the program");
    } finally {
      link = null;
    }
    return otherwise;
  }

  private void lose(Ending how, String why) {
    if (link != null) {
      link.abandon();
    }
    serveRequests();
    bay.end(how);
    publish(LinkState.LOST, why);
    bay.handOverWhenOver();
  }

  private void serveRequests() {
    for (Runnable what = requests.poll(); what != null; what = requests.poll()) {
      what.run();
    }
    bay.endWhenTimeIsUp();
  }

  private void publish(LinkState state, String inWords) {
    BenchSnapshot last = snapshot;
    publish(
        new BenchSnapshot(
            state,
            inWords,
            last.identity(),
            null,
            0,
            last.line(),
            last.lastRefused(),
            bay.snapshot()));
  }

  private void publish(BenchSnapshot newest) {
    snapshot = newest;
    follower.accept(newest);
  }

  /** Stops the head and closes its line; a test that runs ends as {@link Ending#LINE_LOST}. */
  @Override
  public void close() {
    closing.countDown();
    startOnce(); // so that a test that is begun after the closing is told so
    try {
      thread.join(CLOSE_DEADLINE.toMillis());
      HeadLink stuck = link;
      if (thread.isAlive() && stuck != null) {
        stuck.abandon();
        thread.join(CLOSE_DEADLINE.toMillis());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
