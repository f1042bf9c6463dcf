package sagwright;

import java.util.List;
import java.util.Random;
import sagwright.beam.Flexibility;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.Samples;

/** An invented test on the shaft of docs/contract.md, section 3. */
final class BenchmarkedBend {
  static final double MODULUS_MPA = 12340;
  private static final double GREATEST_N = 20;
  private static final double FRAME_MM_PER_N = 0.002;
  private static final double RATIO = 14;

  static final Taper TAPER =
      new Taper(
          SectionShape.ELLIPSE,
          List.of(new Station(0, 12.50, 12.48), new Station(1490, 31, 31)),
          1490);

  static final SetUp MIDDLE = new SetUp(100, 1100, 600, 600, 0);

  private BenchmarkedBend() {}

  /** The whole test at a set-up; every source of uncertainty has something to say. */
  static BendTest of(SetUp setUp, int samples, long seed) {
    double given = Flexibility.of(TAPER, setUp).perMm(RATIO) / MODULUS_MPA;
    return new BendTest(
        new Shaft(TAPER, new boolean[] {true, false}, "European ash", 405.0, 11.2, 0.02, 0.5, null),
        new BenchSetUp(setUp, 0.5, FRAME_MM_PER_N, 0.0002),
        Instrument.ASSUMED,
        new ShearRatio(RATIO, 2),
        samples(samples, 1 / (given + FRAME_MM_PER_N), 0, seed));
  }

  /**
   * A tenth rest, half rising, a tenth held, a fifth falling, a tenth rest.
   *
   * @param toeMm how much further than straight the seating lets it go
   */
  static Samples samples(int samples, double stiffnessNPerMm, double toeMm, long seed) {
    Random random = new Random(seed);
    double[] time = new double[samples];
    double[] load = new double[samples];
    double[] deflection = new double[samples];
    for (int i = 0; i < samples; i++) {
      double share = (double) i / samples;
      double up = Math.min(1, Math.max(0, (share - 0.1) / 0.5));
      double down = Math.min(1, Math.max(0, (share - 0.7) / 0.2));
      double newton = GREATEST_N * (up - down);
      time[i] = 20 * share;
      load[i] = newton + 0.02 * random.nextGaussian();
      deflection[i] =
          newton / stiffnessNPerMm
              + toeMm * (1 - Math.exp(-newton / 1.5))
              + 0.005 * random.nextGaussian();
    }
    return new Samples(time, load, deflection);
  }
}
