package sagwright.bench;

import java.util.Arrays;
import sagwright.run.Samples;

/**
 * The samples of a run so far: an immutable view that any thread may draw from. Load and deflection
 * are reckoned from the zero as it was known when the view was taken.
 */
public final class RunTrace {
  private final long[] micros;
  private final int[] loadCounts;
  private final long[] gaugeSteps;
  private final int size;
  private final Calibration calibration;
  private final RunZero zero;

  private RunTrace(Recorder of, Calibration calibration, RunZero zero) {
    micros = of.micros;
    loadCounts = of.loadCounts;
    gaugeSteps = of.gaugeSteps;
    size = of.size;
    this.calibration = calibration;
    this.zero = zero;
  }

  public int size() {
    return size;
  }

  /** Seconds since the run's first sample. */
  public double timeS(int i) {
    return (micros[i] - micros[0]) / 1e6;
  }

  public double loadN(int i) {
    return calibration.load().newtons(loadCounts[i], zero.loadCounts());
  }

  public double deflectionMm(int i) {
    return calibration.gauge().millimetres(gaugeSteps[i], zero.gaugeSteps());
  }

  public Samples samples() {
    double[] timeS = new double[size];
    double[] loadN = new double[size];
    double[] deflectionMm = new double[size];
    for (int i = 0; i < size; i++) {
      timeS[i] = timeS(i);
      loadN[i] = loadN(i);
      deflectionMm[i] = deflectionMm(i);
    }
    return new Samples(timeS, loadN, deflectionMm);
  }

  /**
   * The growing side, for one thread. What it has handed out is never changed: it writes behind the
   * last sample of every view, and into new arrays once the old are full.
   */
  static final class Recorder {
    private long[] micros = new long[1024];
    private int[] loadCounts = new int[1024];
    private long[] gaugeSteps = new long[1024];
    private int size;

    void add(Reading reading, long atMicros) {
      if (size == micros.length) {
        micros = Arrays.copyOf(micros, 2 * size);
        loadCounts = Arrays.copyOf(loadCounts, 2 * size);
        gaugeSteps = Arrays.copyOf(gaugeSteps, 2 * size);
      }
      micros[size] = atMicros;
      loadCounts[size] = reading.loadCounts();
      gaugeSteps[size] = reading.gaugeSteps();
      size++;
    }

    /** Forgets the samples before this time, views apart. */
    void startAt(long atMicros) {
      int from = 0;
      while (from < size && micros[from] < atMicros) {
        from++;
      }
      micros = Arrays.copyOfRange(micros, from, from + micros.length);
      loadCounts = Arrays.copyOfRange(loadCounts, from, from + loadCounts.length);
      gaugeSteps = Arrays.copyOfRange(gaugeSteps, from, from + gaugeSteps.length);
      size -= from;
    }

    /** The first sample as a zero, for a run that never was at rest. */
    RunZero firstAsZero() {
      return size == 0 ? new RunZero(0, 0) : new RunZero(loadCounts[0], gaugeSteps[0]);
    }

    RunTrace view(Calibration calibration, RunZero zero) {
      return new RunTrace(this, calibration, zero);
    }
  }
}
