package sagwright;

import java.util.concurrent.TimeUnit;
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

/** A whole evaluation in memory: line, modulus, budget, moisture, stress. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EvaluationBenchmark {
  private final Evaluator evaluator = new Evaluator(SpeciesTable.published());
  private final BendTest test = ExampleTest.of(ExampleTest.MIDDLE, 1000, 1);

  @Benchmark
  public Evaluation thousandSamples() throws PoorRunException {
    return evaluator.evaluate(test);
  }
}
