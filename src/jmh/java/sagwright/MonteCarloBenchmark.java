package sagwright;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sagwright.modulus.BendTest;
import sagwright.modulus.MonteCarlo;
import sagwright.run.PoorRunException;
import sagwright.run.StiffnessFinder;
import sagwright.run.StiffnessFit;

/** The second opinion on an uncertainty, on all cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MonteCarloBenchmark {
  private final BendTest test = BenchmarkedBend.of(BenchmarkedBend.MIDDLE, 1000, 1);
  private StiffnessFit fit;

  @Setup
  public void fit() throws PoorRunException {
    fit = StiffnessFinder.find(test.readings(), test.instrument().ofOneReading());
  }

  @Benchmark
  public MonteCarlo hundredThousandDraws() {
    return MonteCarlo.of(test, fit, 100_000, 1);
  }
}
