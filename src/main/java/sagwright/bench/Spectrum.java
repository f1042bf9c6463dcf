package sagwright.bench;

import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Which frequencies the load at rest holds: amplitudes in N of sines at k·{@code stepHz}, k from 0
 * to half the readings a second. A sine between two frequencies shows at both, at no less than 0.85
 * of itself (the Hann window's scalloping loss, 1.42 dB: F. J. Harris, "On the use of windows for
 * harmonic analysis with the discrete Fourier transform", Proc. IEEE 66 (1978), table 1).
 *
 * @param stepHz from one amplitude to the next
 * @param amplitudeN empty where there were too few readings
 */
public record Spectrum(double stepHz, double[] amplitudeN) {
  static final int LEAST_POINTS = 128;
  static final Spectrum NONE = new Spectrum(Double.NaN, new double[0]);

  /**
   * @param loadsN evenly spaced, a power of two of them
   */
  static Spectrum of(double[] loadsN, double readingsPerSecond) {
    int n = loadsN.length;
    double mean = StatUtils.mean(loadsN);
    double[] windowed = new double[n];
    double weights = 0;
    for (int i = 0; i < n; i++) {
      double hann = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / n);
      windowed[i] = (loadsN[i] - mean) * hann;
      weights += hann;
    }
    Complex[] transformed =
        new FastFourierTransformer(DftNormalization.STANDARD)
            .transform(windowed, TransformType.FORWARD);
    double[] amplitude = new double[n / 2 + 1];
    for (int k = 0; k < amplitude.length; k++) {
      amplitude[k] = transformed[k].abs() * (k == 0 || k == n / 2 ? 1 : 2) / weights;
    }
    return new Spectrum(readingsPerSecond / n, amplitude);
  }

  boolean isEmpty() {
    return amplitudeN.length == 0;
  }

  /** The readings a second that it was worked out of. */
  double readingsPerSecond() {
    return stepHz * 2 * (amplitudeN.length - 1);
  }

  /** The greatest amplitude within one step of a frequency. */
  double amplitudeAt(double frequencyHz) {
    int k = (int) Math.round(frequencyHz / stepHz);
    double most = 0;
    for (int i = Math.max(1, k - 1); i <= Math.min(amplitudeN.length - 1, k + 1); i++) {
      most = Math.max(most, amplitudeN[i]);
    }
    return most;
  }

  /** What noise alone shows: the median amplitude. */
  double floorN() {
    return StatUtils.percentile(amplitudeN, 50);
  }
}
