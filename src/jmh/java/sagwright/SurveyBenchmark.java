package sagwright;

import java.util.ArrayList;
import java.util.List;
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
import sagwright.beam.SetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.survey.DifferentShaftsException;
import sagwright.survey.SurveyAnswer;
import sagwright.survey.SurveyProblem;
import sagwright.survey.SurveyRun;
import sagwright.survey.SurveySolver;
import sagwright.wood.SpeciesTable;

/** Eight runs on one shaft, already evaluated: four models fitted, one proposed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SurveyBenchmark {
  /** Between them they listen to the whole shaft, long and short. */
  private static final double[][] SUPPORTS_MM = {
    {100, 1100},
    {50, 1450},
    {50, 750},
    {750, 1450},
    {400, 1100},
    {50, 450},
    {500, 950},
    {1000, 1450}
  };

  private final SurveySolver solver = new SurveySolver();
  private SurveyProblem problem;

  @Setup
  public void test() throws PoorRunException, DifferentShaftsException {
    Evaluator evaluator = new Evaluator(SpeciesTable.published());
    List<SurveyRun> runs = new ArrayList<>();
    for (double[] supports : SUPPORTS_MM) {
      double middle = (supports[0] + supports[1]) / 2;
      SetUp setUp = new SetUp(supports[0], supports[1], middle, middle, 0);
      BendTest test = BenchmarkedBend.of(setUp, 1000, runs.size());
      runs.add(new SurveyRun(test, evaluator.evaluate(test)));
    }
    problem = SurveyProblem.of(runs);
  }

  @Benchmark
  public SurveyAnswer eightRuns() {
    return solver.solve(problem);
  }
}
