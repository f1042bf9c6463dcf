package sagwright.bench;

import java.util.concurrent.CompletableFuture;

/** Where one test at a time runs, or none; what came over the wire goes to it. One thread. */
final class TestBay implements WireListener {
  private static final WireListener NOBODY = new WireListener() {};

  private RunningTest test;
  private TestSnapshot last;

  void begin(RunningTest next, CompletableFuture<RecordedRun> outcome) {
    if (test != null) {
      outcome.completeExceptionally(new IllegalStateException("a test runs already"));
    } else {
      test = next;
    }
  }

  void end(Ending how) {
    if (test != null) {
      test.end(how);
    }
  }

  void endWhenTimeIsUp() {
    if (test != null) {
      test.endWhenTimeIsUp();
    }
  }

  /** Gives a test that is over to who waits for it. */
  void handOverWhenOver() {
    if (test != null && test.isOver()) {
      RunningTest over = test;
      last = over.snapshot();
      test = null;
      over.handOver();
    }
  }

  void fail(Throwable why) {
    if (test != null) {
      test.fail(why);
      test = null;
    }
  }

  /** The test that runs, else the last one as it ended; null before the first. */
  TestSnapshot snapshot() {
    return test == null ? last : test.snapshot();
  }

  private WireListener listener() {
    return test == null ? NOBODY : test.listener();
  }

  @Override
  public void raw(byte[] bytes) {
    listener().raw(bytes);
  }

  @Override
  public void reading(Reading reading, long micros) {
    listener().reading(reading, micros);
  }

  @Override
  public void gap(int missing) {
    listener().gap(missing);
  }

  @Override
  public void restarted() {
    listener().restarted();
  }

  @Override
  public void refused(Refusal why, String line) {
    listener().refused(why, line);
  }

  @Override
  public void answered(HeadAnswer answer) {
    listener().answered(answer);
  }
}
