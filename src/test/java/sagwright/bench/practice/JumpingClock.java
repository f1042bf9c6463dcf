package sagwright.bench.practice;

import java.util.concurrent.atomic.AtomicLong;

/** A time that jumps to wherever it is waited for. */
final class JumpingClock implements PracticeClock {
  private final AtomicLong now = new AtomicLong();

  @Override
  public long micros() {
    return now.get();
  }

  @Override
  public void sleep(long micros) throws InterruptedException {
    if (Thread.interrupted()) {
      throw new InterruptedException();
    }
    now.addAndGet(micros);
  }
}
