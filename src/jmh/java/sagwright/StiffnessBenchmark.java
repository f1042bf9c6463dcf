package sagwright;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sagwright.run.PoorRunException;
import sagwright.run.ReadingUncertainty;
import sagwright.run.Samples;
import sagwright.run.StiffnessFinder;
import sagwright.run.StiffnessFit;

/** How long a run of the bench takes to be fitted, with and without a toe to search for. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class StiffnessBenchmark {
  private static final double STIFFNESS_N_PER_MM = 4;
  private static final double GREATEST_N = 20;

  @Param({"1000", "60000"})
  int samples;

  @Param({"0", "0.3"})
  double toeMm;

  private Samples run;

  /** A tenth rest, half rising, a tenth held, a fifth falling, a tenth rest. */
  @Setup
  public void read() {
    Random random = new Random(1);
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
          newton / STIFFNESS_N_PER_MM
              + toeMm * (1 - Math.exp(-newton / 1.5))
              + 0.005 * random.nextGaussian();
    }
    run = new Samples(time, load, deflection);
  }

  @Benchmark
  public StiffnessFit stiffness() throws PoorRunException {
    return StiffnessFinder.find(run, new ReadingUncertainty(0.02, 0.005));
  }
}
