package sagwright;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluation;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.wood.SpeciesTable;

/**
 * A whole evaluation in memory: line, modulus, budget, moisture, stress. The runs take turns, since
 * a processor learns the branches of one run by heart.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EvaluationBenchmark {
  private final Evaluator evaluator = new Evaluator(SpeciesTable.published());
  private final List<BendTest> tests =
      IntStream.rangeClosed(1, 64)
          .mapToObj(seed -> BenchmarkedBend.of(BenchmarkedBend.MIDDLE, 1000, seed))
          .toList();
  private int turn;

  @Benchmark
  public Evaluation thousandSamples() throws PoorRunException {
    return evaluator.evaluate(tests.get(turn++ & 63));
  }
}
