package sagwright.run;

import java.util.SplittableRandom;

/**
 * An invented bend test with a known stiffness: rest, slack and a soft toe, a hand that loads
 * unevenly, a hold, the way back, rest; with the faults that benches have. Every figure has a plain
 * default; the public fields are what a test changes.
 */
final class SyntheticRun {
  double stiffnessNPerMm = 4.1;
  double peakN = 20;
  double samplesPerS = 80;
  double restS = 2;
  double loadingS = 8;
  double holdS = 1.5;
  double unloadingS = 5;
  double restAfterS = 1;
  double noiseN = 0.02;
  double noiseMm = 0.005;
  double stepN;
  double stepMm;
  double slackMm;
  double toeMm;
  double toeN = 0.8;
  double spikeShare;
  double creepPercentPerDecade;
  double hysteresisPercent;

  /** Relative swing of the loading rate; above 1 the hand goes back at times. */
  double wander = 0.3;

  double offsetN;
  double offsetMm;
  double driftNPerS;

  /** The gauge gives a new value in one of so many samples and repeats it in the others. */
  int gaugeEvery = 1;

  /** Constant-load stops on the way up, a second each. */
  int plateaus;

  /** Load over which the slope falls off: F/k·(1 + (F/peak)·share), as a yielding piece does. */
  double softening;

  /** By how long the gauge's readings lag behind the load's. */
  double gaugeLagS;

  /** By how far the gauge jumps when the load first passes half of its greatest. */
  double slipMm;

  /** Standard deviation of a slow wander of the gauge that lasts about half a second. */
  double slowNoiseMm;

  final SplittableRandom random;

  SyntheticRun(long seed) {
    random = new SplittableRandom(seed);
  }

  Samples make() {
    double[] path = path();
    double[] load = path.clone();
    int n = load.length;
    double[] time = new double[n];
    double[] deflection = new double[n];
    double[] kelvin = new double[3];
    double held = 0;
    double slow = 0;
    double keeps = Math.exp(-2 / samplesPerS);
    double highest = 0;
    boolean back = false;
    int upTo = (int) ((restS + loadingS + plateaus + holdS) * samplesPerS);
    for (int i = 0; i < n; i++) {
      time[i] = Math.round(i / samplesPerS * 1e4) / 1e4;
      double f = path[Math.max(0, i - (int) Math.round(gaugeLagS * samplesPerS))];
      slow = keeps * slow + Math.sqrt(1 - keeps * keeps) * slowNoiseMm * gaussian();
      double creep = 0;
      for (int j = 0; j < kelvin.length; j++) {
        double tau = 3 * Math.pow(10, j);
        kelvin[j] += (f - kelvin[j]) * (1 - Math.exp(-1 / samplesPerS / tau));
        creep += kelvin[j] * creepPercentPerDecade / 100;
      }
      highest = Math.max(highest, f);
      back = i >= upTo;
      double loop = back ? hysteresisPercent / 100 * 4 * f / peakN * (1 - f / peakN) * peakN : 0;
      double slack =
          slackMm * Math.min(1, Math.max(0, (time[i] - restS * 0.7) / (restS * 0.3 + 1e-9)));
      double toe = toeMm * (1 - Math.exp(-f / toeN));
      double bend = 1 + softening * f / peakN;
      double slip = highest > peakN / 2 ? slipMm : 0;
      double d =
          (f * bend + creep + loop) / stiffnessNPerMm
              + (f > 0 || slackMm > 0 ? slack : 0)
              + toe
              + slip;
      if (i % gaugeEvery == 0 || i == 0) {
        held = rounded(d + slow + noiseMm * gaussian() + offsetMm, stepMm);
      }
      deflection[i] = held;
      load[i] = rounded(path[i] + noiseN * gaussian() + offsetN + driftNPerS * time[i], stepN);
    }
    spike(load, deflection);
    return new Samples(time, load, deflection);
  }

  private void spike(double[] load, double[] deflection) {
    for (int i = 0; i < load.length; i++) {
      if (random.nextDouble() < spikeShare) {
        double size = (0.1 + random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
        if (random.nextBoolean()) {
          load[i] += size * peakN;
        } else {
          deflection[i] += size * peakN / stiffnessNPerMm;
        }
      }
    }
  }

  private double[] path() {
    int rest = (int) (restS * samplesPerS);
    int up = (int) (loadingS * samplesPerS);
    int hold = (int) (holdS * samplesPerS);
    int down = (int) (unloadingS * samplesPerS);
    int after = (int) (restAfterS * samplesPerS);
    int stop = plateaus > 0 ? (int) samplesPerS : 0;
    double[] load = new double[rest + up + stop * plateaus + hold + down + after];
    double[] rise = unevenRise(up);
    int at = rest;
    for (int i = 0; i < up; i++) {
      load[at++] = peakN * rise[i];
      if (plateaus > 0
          && (i + 1) % Math.max(1, up / (plateaus + 1)) == 0
          && (i + 1) / Math.max(1, up / (plateaus + 1)) <= plateaus) {
        for (int j = 0; j < stop; j++) {
          load[at++] = peakN * rise[i];
        }
      }
    }
    for (int i = 0; i < hold; i++) {
      load[at++] = peakN * (1 + 0.004 * Math.sin(i / samplesPerS * 5));
    }
    double[] fall = unevenRise(down);
    for (int i = 0; i < down; i++) {
      load[at++] = peakN * (1 - fall[i]);
    }
    return load;
  }

  /** From 0 to 1 with a rate that swings slowly. */
  private double[] unevenRise(int n) {
    double a = 2 * Math.PI * random.nextDouble();
    double b = 2 * Math.PI * random.nextDouble();
    double[] rise = new double[n];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double t = (double) i / n;
      sum += Math.max(-0.8, 1 + wander * (Math.sin(14 * t + a) + Math.sin(37 * t + b)));
      rise[i] = sum;
    }
    for (int i = 0; i < n; i++) {
      rise[i] /= sum;
    }
    return rise;
  }

  double gaussian() {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private static double rounded(double value, double step) {
    return step > 0 ? Math.round(value / step) * step : value;
  }
}
