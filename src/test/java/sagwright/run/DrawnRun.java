package sagwright.run;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * An invented run along a drawn load path at 80 samples a second on a shaft of 4 N/mm, with the
 * stated noise on both readings. The arrays are open: a test spoils them as it likes.
 */
final class DrawnRun {
  static final double STIFFNESS_N_PER_MM = 4;
  static final int SAMPLES_PER_S = 80;
  static final ReadingUncertainty STATED = new ReadingUncertainty(0.02, 0.005);

  final double[] loadN;
  final double[] deflectionMm;
  final Random random = new Random(5);

  private DrawnRun(double[] path, DoubleUnaryOperator deflectionOfLoad) {
    loadN = new double[path.length];
    deflectionMm = new double[path.length];
    for (int i = 0; i < path.length; i++) {
      deflectionMm[i] = deflectionOfLoad.applyAsDouble(path[i]) + 0.005 * random.nextGaussian();
      loadN[i] = path[i] + 0.02 * random.nextGaussian();
    }
  }

  /** Rest, 8 s up to 20 N, a hold, down, rest. */
  static DrawnRun ordinary() {
    return along(0, 0, 2, 20, 8, 20, 2, 0, 4, 0, 1);
  }

  /** From the first load, then pairs of the next load in N and the seconds to reach it. */
  static DrawnRun along(double from, double... loadsAndSeconds) {
    return bending(f -> f / STIFFNESS_N_PER_MM, from, loadsAndSeconds);
  }

  static DrawnRun bending(
      DoubleUnaryOperator deflectionOfLoad, double from, double... loadsAndSeconds) {
    double[] path = new double[0];
    double now = from;
    for (int k = 0; k < loadsAndSeconds.length; k += 2) {
      int steps = (int) Math.round(loadsAndSeconds[k + 1] * SAMPLES_PER_S);
      int at = path.length;
      path = Arrays.copyOf(path, at + steps);
      for (int j = 1; j <= steps; j++) {
        path[at + j - 1] = now + (loadsAndSeconds[k] - now) * j / steps;
      }
      now = loadsAndSeconds[k];
    }
    return new DrawnRun(path, deflectionOfLoad);
  }

  /** Just these loads, a sample each. */
  static DrawnRun ofLoads(double... loads) {
    return new DrawnRun(loads, f -> f / STIFFNESS_N_PER_MM);
  }

  /** Lets a series give a new value only every so many samples. */
  static void slowDown(double[] values, int every) {
    for (int i = 0; i < values.length; i++) {
      values[i] = values[i - i % every];
    }
  }

  int size() {
    return loadN.length;
  }

  StiffnessFit fit() throws PoorRunException {
    return StiffnessFinder.find(samples(), STATED);
  }

  Samples samples() {
    double[] time = new double[loadN.length];
    for (int i = 0; i < time.length; i++) {
      time[i] = (double) i / SAMPLES_PER_S;
    }
    return new Samples(time, loadN, deflectionMm);
  }
}
