package sagwright.bench.practice;

/** The time that a practice head lives in. */
public interface PracticeClock {
  long micros();

  /** Waits so long in this clock's own time. */
  void sleep(long micros) throws InterruptedException;

  /** The ordinary time. */
  static PracticeClock real() {
    return faster(1);
  }

  /** A time that runs so many times faster than the ordinary one. */
  static PracticeClock faster(double times) {
    return new PracticeClock() {
      @Override
      public long micros() {
        return Math.round(System.nanoTime() * 1e-3 * times);
      }

      @Override
      public void sleep(long micros) throws InterruptedException {
        long nanos = Math.max(1, Math.round(micros * 1e3 / times));
        Thread.sleep(nanos / 1_000_000, (int) (nanos % 1_000_000));
      }
    };
  }
}
