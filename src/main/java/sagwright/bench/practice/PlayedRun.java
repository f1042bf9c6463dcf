package sagwright.bench.practice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sagwright.bench.Calibration;
import sagwright.bench.Reading;
import sagwright.run.Samples;

/** A run's samples as the readings of a head: a second of rest before them and two after. */
final class PlayedRun {
  /** A head sends ten readings a second at the least. */
  static final long REST_SPACING_MICROS = 100_000;

  private static final long REST_BEFORE_MICROS = 1_000_000;
  private static final long REST_AFTER_MICROS = 2_000_000;
  private static final int REST_COUNTS = 20_000;
  private static final int REST_STEPS = 500;

  /** A load that has come back to within this share of its span is left where it is. */
  private static final double BACK_SHARE = 0.05;

  private final Samples samples;
  private final Calibration calibration;
  private final List<PlayedReading> readings = new ArrayList<>();
  private long micros;

  private PlayedRun(Samples samples, Calibration calibration) {
    this.samples = samples;
    this.calibration = calibration;
  }

  /**
   * @param restarts whether the head's counters start anew in the middle
   * @throws IllegalArgumentException where there are no samples, or more counts than a converter
   *     has
   */
  static List<PlayedReading> readings(Samples samples, Calibration calibration, boolean restarts) {
    if (samples.size() == 0) {
      throw new IllegalArgumentException("the run has no samples to play");
    }
    PlayedRun run = new PlayedRun(samples, calibration);
    run.rest(0, REST_BEFORE_MICROS);
    run.playSamples();
    run.rest(run.indexOfRestAfter(), REST_AFTER_MICROS);
    return restarts ? run.restarted() : List.copyOf(run.readings);
  }

  private void playSamples() {
    double[] timeS = samples.timeS();
    for (int i = 0; i < timeS.length; i++) {
      if (i > 0) {
        long step =
            Math.round((timeS[i] - timeS[0]) * 1e6) - Math.round((timeS[i - 1] - timeS[0]) * 1e6);
        fillIn(i - 1, step);
        micros += step;
      } else {
        micros += spacingMicros();
      }
      add(counts(samples.loadN()[i]), steps(i));
    }
  }

  /** Where samples lie far apart the load is sent between them, as with a gauge that is slow. */
  private void fillIn(int from, long stepMicros) {
    long between = micros;
    long parts = (stepMicros - 1) / REST_SPACING_MICROS;
    for (long part = 1; part <= parts; part++) {
      double share = (double) (part * REST_SPACING_MICROS) / stepMicros;
      double loadN =
          samples.loadN()[from] + share * (samples.loadN()[from + 1] - samples.loadN()[from]);
      micros = between + part * REST_SPACING_MICROS;
      add(counts(loadN), null);
    }
    micros = between;
  }

  private void rest(int index, long lengthMicros) {
    long spacing = spacingMicros();
    for (long t = 0; t < lengthMicros; t += spacing) {
      micros += spacing;
      add(counts(samples.loadN()[index]), steps(index));
    }
  }

  /** The last sample where the load is back; else the first: the load is let go. */
  private int indexOfRestAfter() {
    double[] load = samples.loadN();
    double span = Arrays.stream(load).max().orElse(0) - Arrays.stream(load).min().orElse(0);
    int last = load.length - 1;
    return Math.abs(load[last] - load[0]) <= BACK_SHARE * span ? last : 0;
  }

  private long spacingMicros() {
    double[] timeS = samples.timeS();
    double mean = (timeS[timeS.length - 1] - timeS[0]) * 1e6 / Math.max(1, timeS.length - 1);
    return Math.max(1_000, Math.min(REST_SPACING_MICROS, Math.round(mean)));
  }

  private void add(int counts, Long steps) {
    int seq = readings.size() % Reading.SEQ_VALUES;
    long time = micros % Reading.TIME_VALUES;
    readings.add(new PlayedReading(micros, new Reading(seq, time, counts, steps, 0)));
  }

  private int counts(double loadN) {
    long counts = REST_COUNTS + calibration.load().counts(loadN - samples.loadN()[0]);
    if (counts < Reading.LEAST_COUNTS || counts > Reading.GREATEST_COUNTS) {
      throw new IllegalArgumentException(
          "a load of " + loadN + " N is more counts than a converter has, by this calibration");
    }
    return (int) counts;
  }

  private Long steps(int i) {
    return REST_STEPS
        + calibration.gauge().steps(samples.deflectionMm()[i] - samples.deflectionMm()[0]);
  }

  private List<PlayedReading> restarted() {
    int at = readings.size() / 2;
    long from = readings.get(at).dueMicros();
    List<PlayedReading> anew = new ArrayList<>(readings.subList(0, at));
    for (int i = at; i < readings.size(); i++) {
      PlayedReading played = readings.get(i);
      Reading old = played.reading();
      int seq = (i - at) % Reading.SEQ_VALUES;
      long time = (played.dueMicros() - from) % Reading.TIME_VALUES;
      anew.add(
          new PlayedReading(
              played.dueMicros(),
              new Reading(seq, time, old.loadCounts(), old.gaugeSteps(), old.flags())));
    }
    return List.copyOf(anew);
  }
}
