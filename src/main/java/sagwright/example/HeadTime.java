package sagwright.example;

import sagwright.bench.practice.PracticeClock;

/** A time that goes on only where somebody waits, and then at once. */
final class HeadTime implements PracticeClock {
  private long micros;

  @Override
  public long micros() {
    return micros;
  }

  @Override
  public void sleep(long waitMicros) {
    micros += waitMicros;
  }
}
