package sagwright.bench;

import java.util.Arrays;

/**
 * The load once it has left its rest: its peak, whether it has come back off it, whether it is off.
 * Single wild readings are smoothed away; an uneven hand may dip and go on. Loads in N from the
 * zero. The thresholds are common practice, no source.
 */
final class LoadWatch {
  /** A load that never passed so many tolerances was a touch, not a loading. */
  private static final double TOUCH_TOLERANCES = 12;

  /** On a noisy bench this share of the target will do, but no fewer tolerances than these. */
  private static final double TOUCH_SHARE_OF_TARGET = 0.1;

  private static final double LEAST_TOUCH_TOLERANCES = 4;

  /** Off its peak: down by this share of it. A hand dips less than that. */
  private static final double OFF_PEAK_SHARE = 0.1;

  /** Off altogether: below this share of the peak, for the cell may not return to its zero. */
  private static final double OFF_SHARE = 0.04;

  /** Nearly off, and so left: below this share and still. */
  private static final double NEARLY_OFF_SHARE = 0.2;

  private static final long OFF_MICROS = 500_000;

  /** Longer where the target was not nearly reached: the hand may have slipped off. */
  private static final long OFF_EARLY_MICROS = 1_200_000;

  private static final long NEARLY_OFF_MICROS = 1_500_000;

  /** Readings closer together than this are smoothed over five, else over three. */
  private static final long CLOSE_MICROS = 25_000;

  private final double toleranceN;
  private final LoadLimits limits;
  private final double mostBelievableN;
  private final double[] newest = new double[5];
  private int taken;
  private long lastMicros;
  private long spacingMicros = CLOSE_MICROS;
  private double smoothN;
  private double peakN;
  private double troughN;
  private boolean lettingOff;
  private boolean reachedTarget;
  private long offSinceMicros = -1;
  private long stillSinceMicros = -1;
  private double stillAtN;
  private boolean isOff;

  /**
   * @param toleranceN what the load scatters by at rest
   * @param mostBelievableN a load beyond is no load that this bench can show
   */
  LoadWatch(double toleranceN, LoadLimits limits, double mostBelievableN) {
    this.toleranceN = toleranceN;
    this.limits = limits;
    this.mostBelievableN = mostBelievableN;
  }

  void add(long micros, double loadN) {
    if (Math.abs(loadN) > mostBelievableN) {
      return;
    }
    spacingMicros = taken == 0 ? spacingMicros : micros - lastMicros;
    lastMicros = micros;
    newest[taken++ % newest.length] = loadN;
    smoothN = smoothed();
    peakN = Math.max(peakN, smoothN);
    reachedTarget |= smoothN >= limits.targetN();
    followTurns();
    followOff(micros);
  }

  private double smoothed() {
    int n = Math.min(taken, spacingMicros < CLOSE_MICROS ? 5 : 3);
    double[] window = new double[n];
    for (int i = 0; i < n; i++) {
      window[i] = newest[Math.floorMod(taken - 1 - i, newest.length)];
    }
    Arrays.sort(window);
    return window[(n - 1) / 2];
  }

  private void followTurns() {
    double step = Math.max(OFF_PEAK_SHARE * peakN, 3 * toleranceN);
    if (!lettingOff && isLoading() && smoothN <= peakN - step) {
      lettingOff = true;
      troughN = smoothN;
    } else if (lettingOff) {
      troughN = Math.min(troughN, smoothN);
      lettingOff = smoothN <= troughN + step;
    }
  }

  private void followOff(long micros) {
    boolean below = smoothN <= Math.max(2 * toleranceN, OFF_SHARE * peakN);
    offSinceMicros = !below ? -1 : offSinceMicros < 0 ? micros : offSinceMicros;
    boolean nearly = lettingOff && smoothN <= NEARLY_OFF_SHARE * peakN;
    if (!nearly || Math.abs(smoothN - stillAtN) > 2 * toleranceN || stillSinceMicros < 0) {
      stillSinceMicros = nearly ? micros : -1;
      stillAtN = smoothN;
    }
    boolean early = peakN < limits.targetN() / 2;
    isOff =
        (offSinceMicros >= 0 && micros - offSinceMicros >= (early ? OFF_EARLY_MICROS : OFF_MICROS))
            || (stillSinceMicros >= 0 && micros - stillSinceMicros >= NEARLY_OFF_MICROS);
  }

  /** Whether this is more than a touch. */
  boolean isLoading() {
    double touchN =
        Math.min(TOUCH_TOLERANCES * toleranceN, TOUCH_SHARE_OF_TARGET * limits.targetN());
    return peakN >= Math.max(touchN, LEAST_TOUCH_TOLERANCES * toleranceN);
  }

  /** Whether the load has come back off its peak. */
  boolean isLettingOff() {
    return lettingOff;
  }

  /** Whether the load is back off, and has been for long enough. */
  boolean isOff() {
    return isOff;
  }

  boolean hasReachedTarget() {
    return reachedTarget;
  }

  double peakN() {
    return peakN;
  }

  /** The newest load, single wild readings smoothed away. */
  double smoothN() {
    return smoothN;
  }
}
