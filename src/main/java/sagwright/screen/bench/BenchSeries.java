package sagwright.screen.bench;

/**
 * How far a series of runs at unlike turns has come. The stiffness of a shaft is the same half a
 * turn on, so that its runs are spread evenly over half a turn: so many runs tell most of which way
 * is stiffer.
 *
 * @param runs in all
 * @param done that gave an answer since the blank was laid
 */
record BenchSeries(int runs, int done) {
  static final int MOST_RUNS = 9;

  static BenchSeries of(int runs) {
    return new BenchSeries(runs, 0);
  }

  BenchSeries oneMore() {
    return new BenchSeries(runs, done + 1);
  }

  /** Whether another run follows. */
  boolean goesOn() {
    return done > 0 && done < runs;
  }

  double stepDegrees() {
    return 180.0 / runs;
  }
}
