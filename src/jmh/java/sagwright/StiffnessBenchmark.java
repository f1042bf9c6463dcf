package sagwright;

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

  @Param({"1000", "60000"})
  int samples;

  @Param({"0", "0.3"})
  double toeMm;

  private Samples run;

  @Setup
  public void read() {
    run = BenchmarkedBend.samples(samples, STIFFNESS_N_PER_MM, toeMm, 1);
  }

  @Benchmark
  public StiffnessFit stiffness() throws PoorRunException {
    return StiffnessFinder.find(run, new ReadingUncertainty(0.02, 0.005));
  }
}
