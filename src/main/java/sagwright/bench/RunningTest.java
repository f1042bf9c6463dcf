package sagwright.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;

/** A test while it runs: its walk, its journal, its deadline. One thread. */
final class RunningTest {
  private final TestWalk walk;
  private final LineJournal journal;
  private final WireListener listener;
  private final long mostNanos;
  private final long startNanos = System.nanoTime();
  private final CompletableFuture<RecordedRun> outcome;

  RunningTest(
      TestPlan plan, LineJournal journal, Duration most, CompletableFuture<RecordedRun> outcome) {
    this.walk = new TestWalk(plan);
    this.journal = journal;
    this.listener = new WireTee(new Keeper(), walk);
    this.mostNanos = most.toNanos();
    this.outcome = outcome;
  }

  /** The journal first, then the walk. */
  WireListener listener() {
    return listener;
  }

  void endWhenTimeIsUp() {
    if (System.nanoTime() - startNanos >= mostNanos) {
      walk.end(Ending.TIMED_OUT);
    }
  }

  void end(Ending how) {
    walk.end(how);
  }

  boolean isOver() {
    return walk.isOver();
  }

  TestSnapshot snapshot() {
    return walk.snapshot();
  }

  /** Hands the run to who waits for it. */
  void handOver() {
    outcome.complete(walk.run());
  }

  void fail(Throwable why) {
    outcome.completeExceptionally(why);
  }

  /** Keeps the lines of the run, and none that come after its end. */
  private final class Keeper implements WireListener {
    @Override
    public void raw(byte[] bytes) {
      if (walk.isOver()) {
        return;
      }
      try {
        journal.append(bytes);
      } catch (IOException e) {
        System.getLogger(RunningTest.class.getName())
            .log(System.Logger.Level.DEBUG, "the journal took no more", e);
        walk.end(Ending.NOT_KEPT);
      }
    }
  }
}
