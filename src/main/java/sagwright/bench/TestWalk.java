package sagwright.bench;

import java.util.EnumSet;
import java.util.Set;

/**
 * Leads one test on the bench, fed with what comes over the wire: waits for the rest and takes the
 * zero, follows the load up and down, says what to do next, and ends by itself when the load is
 * back off. {@link #end} ends it otherwise.
 *
 * <p>No thread, no clock but the head's: the same lines always give the same run.
 */
public final class TestWalk implements WireListener {
  /** Below the target by less than this share of itself, noise is never taken for load. */
  private static final double LEAST_TOLERANCE_OF_TARGET = 0.002;

  private static final double LEAST_TOLERANCE_COUNTS = 8;
  private static final double LEAST_TOLERANCE_UNCERTAINTIES = 4;

  /** So many readings running must have left the rest: one or two may be wild. */
  private static final int READINGS_TO_LEAVE = 3;

  /** The slowest gauges give three values a second; one that gives none for so long is silent. */
  private static final long GAUGE_SILENT_MICROS = 1_500_000;

  /** While at rest the zero is taken anew so often. */
  private static final long ZERO_EVERY_MICROS = 100_000;

  private static final double NEAR_SAFE_SHARE = 0.85;
  private static final double MOST_BELIEVABLE_SHARE = 2;

  /** This share of the target, put on before the rest or taken off after it, is a load. */
  private static final double LOAD_SHARE = 0.1;

  private final TestPlan plan;
  private final Calibration calibration;
  private final RestWatch rest;
  private final RunTrace.Recorder recorder = new RunTrace.Recorder();
  private final Set<BenchWarning> seen = EnumSet.noneOf(BenchWarning.class);
  private final RecentReadings gaugeAtRest = new RecentReadings();
  private LoadWatch load;
  private TestPhase phase = TestPhase.WAITING_FOR_REST;
  private Set<BenchWarning> warnings = EnumSet.noneOf(BenchWarning.class);
  private LineStatistics line = LineStatistics.NONE;
  private RunZero zero;
  private double toleranceCounts;
  private long zeroMicros;
  private int outside;
  private int backward;
  private boolean hasStarted;
  private long startMicros;
  private long newestMicros;
  private long gaugeMicros;
  private double newestCounts = Double.NaN;
  private double newestSteps = Double.NaN;
  private Ending ending;

  public TestWalk(TestPlan plan) {
    this.plan = plan;
    this.calibration = plan.calibration();
    double leastN =
        Math.max(
            LEAST_TOLERANCE_OF_TARGET * plan.limits().targetN(),
            LEAST_TOLERANCE_UNCERTAINTIES * calibration.load().uncertaintyN());
    this.rest = new RestWatch(Math.max(LEAST_TOLERANCE_COUNTS, leastN / newtonPerCount()));
  }

  @Override
  public void refused(Refusal why, String text) {
    if (!isOver()) {
      line = line.plusRefused();
    }
  }

  /** What went missing before the test's first reading is not the test's. */
  @Override
  public void gap(int missing) {
    if (!isOver() && hasStarted) {
      line = line.plusGap(missing);
    }
  }

  /**
   * A head that starts anew ends the run: except before the zero is taken, when it does so because
   * the line was opened or readings were asked for.
   */
  @Override
  public void restarted() {
    if (phase == TestPhase.WAITING_FOR_REST) {
      rest.clear();
      gaugeAtRest.clear();
      recorder.startAt(Long.MAX_VALUE);
    } else {
      end(Ending.HEAD_RESTARTED);
    }
  }

  @Override
  public void reading(Reading reading, long micros) {
    if (isOver()) {
      return;
    }
    if (!hasStarted) {
      hasStarted = true;
      startMicros = micros;
      gaugeMicros = micros;
    }
    line = line.plusReading();
    newestMicros = micros;
    if (reading.isLoadUsable() && reading.isGaugeUsable()) {
      recorder.add(reading, micros);
    }
    if (reading.isGaugeUsable()) {
      gaugeMicros = micros;
      newestSteps = reading.gaugeSteps();
      if (zero != null && Double.isNaN(zero.gaugeSteps())) {
        zero = new RunZero(zero.loadCounts(), newestSteps); // it came too late for the rest
      }
    }
    if (reading.isLoadUsable()) {
      newestCounts = reading.loadCounts();
      follow(micros);
      boolean isBelow = zero != null && loadN() < -LOAD_SHARE * plan.limits().targetN();
      backward = isBelow ? backward + 1 : 0;
    }
    warnings = warningsOf(reading);
    seen.addAll(warnings);
    if (phase == TestPhase.LETTING_OFF && load.isOff()) {
      end(Ending.LOAD_OFF);
    }
  }

  private void follow(long micros) {
    switch (phase) {
      case WAITING_FOR_REST -> waitForRest(micros);
      case AT_REST -> watchTheRest(micros);
      default -> watchTheLoad(micros);
    }
  }

  private void waitForRest(long micros) {
    addToRest(micros);
    if (!rest.isAtRest()) {
      return;
    }
    if (rest.startAtTheRest(LOAD_SHARE * plan.limits().targetN() / newtonPerCount())) {
      recorder.startAt(rest.sinceMicros());
      gaugeAtRest.clear();
      noteGauge(micros);
    }
    takeZero(micros);
    phase = TestPhase.AT_REST;
    outside = 0;
  }

  private void watchTheRest(long micros) {
    if (micros - zeroMicros > ZERO_EVERY_MICROS) {
      takeZero(micros);
    }
    double fromZero =
        (newestCounts - zero.loadCounts()) * Math.signum(calibration.load().newtonPerCount());
    if (Math.abs(fromZero) <= toleranceCounts) {
      outside = 0;
      addToRest(micros);
      return;
    }
    outside++;
    if (outside < READINGS_TO_LEAVE) {
      return;
    }
    if (fromZero > 0) {
      takeZero(micros);
      load =
          new LoadWatch(
              toleranceCounts * newtonPerCount(),
              plan.limits(),
              MOST_BELIEVABLE_SHARE * calibration.load().greatestN());
      phase = TestPhase.LOADING;
    } else {
      // What rested on the shaft was taken off, or it was shifted: there is another rest to find.
      rest.clear();
      gaugeAtRest.clear();
      phase = TestPhase.WAITING_FOR_REST;
    }
  }

  private void addToRest(long micros) {
    rest.add(micros, newestCounts);
    noteGauge(micros);
  }

  private void noteGauge(long micros) {
    if (gaugeMicros == micros && !Double.isNaN(newestSteps)) {
      gaugeAtRest.add(micros, newestSteps);
    }
  }

  private void takeZero(long micros) {
    zero = new RunZero(rest.zeroCounts(), gaugeAtRest.median());
    toleranceCounts = rest.toleranceCounts();
    zeroMicros = micros;
  }

  private void watchTheLoad(long micros) {
    load.add(micros, calibration.load().newtons(newestCounts, zero.loadCounts()));
    if (load.isLoading()) {
      phase = load.isLettingOff() ? TestPhase.LETTING_OFF : TestPhase.LOADING;
    } else if (load.isOff()) {
      phase = TestPhase.AT_REST; // it was a touch
      outside = 0;
    }
  }

  private double newtonPerCount() {
    return Math.abs(calibration.load().newtonPerCount());
  }

  private Set<BenchWarning> warningsOf(Reading reading) {
    Set<BenchWarning> now = EnumSet.noneOf(BenchWarning.class);
    if (load != null && isUnderLoad()) {
      if (load.smoothN() > plan.mostN()) {
        now.add(BenchWarning.OVER_SAFE_LOAD);
      } else if (load.smoothN() > NEAR_SAFE_SHARE * plan.mostN()) {
        now.add(BenchWarning.NEAR_SAFE_LOAD);
      }
    }
    if (backward >= READINGS_TO_LEAVE) {
      now.add(BenchWarning.LOAD_BACKWARD);
    }
    if (Math.abs(deflectionMm()) > calibration.gauge().greatestMm()) {
      now.add(BenchWarning.GAUGE_BEYOND_TRAVEL);
    }
    if (reading.has(Reading.LOAD_AT_END_STOP)) {
      now.add(BenchWarning.LOAD_AT_END_STOP);
    }
    if (reading.has(Reading.LOAD_MISSING)) {
      now.add(BenchWarning.LOAD_MISSING);
    }
    if (reading.has(Reading.GAUGE_MISSING) || newestMicros - gaugeMicros > GAUGE_SILENT_MICROS) {
      now.add(BenchWarning.GAUGE_SILENT);
    }
    if (reading.has(Reading.HEAD_DROPPED)) {
      now.add(BenchWarning.HEAD_DROPPED);
    }
    return now;
  }

  private boolean isUnderLoad() {
    return phase == TestPhase.LOADING || phase == TestPhase.LETTING_OFF;
  }

  private double loadN() {
    return zero == null ? Double.NaN : calibration.load().newtons(newestCounts, zero.loadCounts());
  }

  private double deflectionMm() {
    return zero == null
        ? Double.NaN
        : calibration.gauge().millimetres(newestSteps, zero.gaugeSteps());
  }

  /** Ends the test; where it is over already, nothing changes. */
  public void end(Ending how) {
    if (!isOver()) {
      ending = how;
    }
  }

  public boolean isOver() {
    return ending != null;
  }

  public TestSnapshot snapshot() {
    TestPhase shown = isOver() ? TestPhase.DONE : phase;
    boolean enough = isUnderLoad() && load.hasReachedTarget();
    return new TestSnapshot(
        shown,
        enough && !isOver() ? Instruction.LET_OFF : shown.instruction(),
        plan.limits(),
        loadN(),
        deflectionMm(),
        greatestLoadN(),
        warnings,
        line,
        zero == null ? new RunTrace.Recorder().view(calibration, new RunZero(0, 0)) : trace(),
        (newestMicros - startMicros) / 1e6);
  }

  private RunTrace trace() {
    return recorder.view(calibration, zero);
  }

  private double greatestLoadN() {
    return load == null ? 0 : load.peakN();
  }

  /**
   * What the test has left; only for one that is over.
   *
   * @throws IllegalStateException while it runs
   */
  public RecordedRun run() {
    if (!isOver()) {
      throw new IllegalStateException("the test still runs");
    }
    RunZero from = zero != null ? zero : recorder.firstAsZero();
    return new RecordedRun(
        recorder.view(calibration, from).samples(),
        line,
        ending,
        ending == Ending.LOAD_OFF || phase == TestPhase.LETTING_OFF,
        from,
        greatestLoadN(),
        seen);
  }
}
