package sagwright.modulus;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.IntStream;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.run.StiffnessFit;
import sagwright.uncertainty.AdaptiveMonteCarlo;
import sagwright.uncertainty.BudgetCheck;
import sagwright.uncertainty.Quantile;

/**
 * The second opinion on a modulus's uncertainty: the distributions of all that goes in are carried
 * through the model draw by draw (JCGM 101:2008). Everything is taken as normal.
 *
 * @param draws number of draws, 2 or more
 * @param modulusMPa their mean
 * @param modulusStdUncertaintyMPa their standard deviation
 * @param low95MPa lower end of the probabilistically symmetric 95 % interval (JCGM 101, 7.7)
 * @param high95MPa its upper end
 */
public record MonteCarlo(
    int draws,
    double modulusMPa,
    double modulusStdUncertaintyMPa,
    double low95MPa,
    double high95MPa) {
  /**
   * Draws that share one stream of random numbers, so that any number of cores gives one result.
   */
  private static final int CHUNK = 1000;

  private static final String GENERATOR = "L64X128MixRandom";

  /** Same test, draws and seed: same digits, whatever the machine. */
  public static MonteCarlo of(BendTest test, StiffnessFit fit, int draws, long seed) {
    return summary(draws(test, fit, 0, draws, seed));
  }

  /**
   * Draws until the modulus has settled closely enough to check the budget with (JCGM 101, 7.9 and
   * 8.2), and at most five million times; with {@link sagwright.uncertainty.BudgetCheck}.
   */
  public static AdaptiveMonteCarlo settled(BendTest test, StiffnessFit fit, long seed) {
    int chunksOfBatch = AdaptiveMonteCarlo.BATCH / CHUNK;
    return AdaptiveMonteCarlo.run(
        batch -> draws(test, fit, batch * chunksOfBatch, AdaptiveMonteCarlo.BATCH, seed),
        BudgetCheck.DIGITS,
        BudgetCheck.SETTLED_SHARE,
        MOST_DRAWS / AdaptiveMonteCarlo.BATCH);
  }

  private static final int MOST_DRAWS = 5_000_000;

  private static double[] draws(
      BendTest test, StiffnessFit fit, int firstChunk, int draws, long seed) {
    double[] moduli = new double[draws];
    int chunks = (draws + CHUNK - 1) / CHUNK;
    RandomGeneratorFactory<RandomGenerator> factory = RandomGeneratorFactory.of(GENERATOR);
    IntStream.range(0, chunks)
        .parallel()
        .forEach(
            chunk -> {
              RandomGenerator random = factory.create(seed * 1_000_003L + firstChunk + chunk);
              int end = Math.min(draws, (chunk + 1) * CHUNK);
              for (int i = chunk * CHUNK; i < end; i++) {
                moduli[i] = oneDraw(test, fit, random);
              }
            });
    return moduli;
  }

  private static MonteCarlo summary(double[] moduli) {
    int n = moduli.length;
    double mean = Arrays.stream(moduli).sum() / n;
    double squares = 0;
    for (double m : moduli) {
      squares += (m - mean) * (m - mean);
    }
    Arrays.sort(moduli);
    return new MonteCarlo(
        n,
        mean,
        Math.sqrt(squares / (n - 1)),
        Quantile.ofSorted(moduli, 0.025),
        Quantile.ofSorted(moduli, 0.975));
  }

  private static double oneDraw(BendTest test, StiffnessFit fit, RandomGenerator random) {
    Instrument instrument = test.instrument();
    BenchSetUp setUp = test.setUp();
    double stiffness =
        (fit.stiffnessNPerMm() + fit.lineUncertaintyNPerMm() * random.nextGaussian())
            * (1 + instrument.loadScaleUncertaintyPercent() / 100 * random.nextGaussian())
            / (1 + instrument.gaugeScaleUncertaintyPercent() / 100 * random.nextGaussian());
    double frame =
        setUp.frameComplianceMmPerN()
            + setUp.frameComplianceUncertaintyMmPerN() * random.nextGaussian();
    double ratio =
        test.ratio().value() + test.ratio().standardUncertainty() * random.nextGaussian();
    double spliceModulus = spliceModulus(test.shaft(), random);
    return new ModulusEquation(
            taper(test.shaft(), random),
            test.shaft().splice(),
            positions(setUp, random),
            instrument.gaugeSpringNPerMm())
        .modulusMPa(1 / stiffness - frame, ratio, spliceModulus);
  }

  private static double spliceModulus(Shaft shaft, RandomGenerator random) {
    if (shaft.splice() == null) {
      return Double.NaN;
    }
    return shaft.splice().modulusMPa()
        * (1 + shaft.splice().modulusUncertaintyPercent() / 100 * random.nextGaussian());
  }

  private static Taper taper(Shaft shaft, RandomGenerator random) {
    double u = shaft.diameterUncertaintyMm();
    double common = u * Math.sqrt(shaft.diameterCommonShare()) * random.nextGaussian();
    double own = u * Math.sqrt(1 - shaft.diameterCommonShare());
    Station[] drawn = new Station[shaft.taper().stationCount()];
    for (int i = 0; i < drawn.length; i++) {
      Station s = shaft.taper().station(i);
      double ofDepth = common + own * random.nextGaussian();
      double ofWidth = shaft.widthMeasured()[i] ? common + own * random.nextGaussian() : ofDepth;
      drawn[i] = new Station(s.xMm(), s.depthMm() + ofDepth, s.widthMm() + ofWidth);
    }
    return new Taper(shaft.taper().shape(), Arrays.asList(drawn), shaft.taper().lengthMm());
  }

  private static SetUp positions(BenchSetUp setUp, RandomGenerator random) {
    SetUp p = setUp.positions();
    double u = setUp.positionUncertaintyMm();
    return new SetUp(
        p.supportAMm() + u * random.nextGaussian(),
        p.supportBMm() + u * random.nextGaussian(),
        p.loadMm() + u * random.nextGaussian(),
        p.gaugeMm() + u * random.nextGaussian(),
        p.turnDegrees());
  }
}
