package sagwright;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.choose.Allocation;
import sagwright.choose.Allocator;
import sagwright.choose.Candidate;
import sagwright.choose.ChanceTable;
import sagwright.choose.OrderTrial;
import sagwright.choose.Ranking;
import sagwright.choose.RankingWeights;
import sagwright.choose.Standing;
import sagwright.finish.BlankWood;
import sagwright.finish.FinishPlan;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/** Ten thousand blanks for one order, and 200 orders for 2,000 blanks, alike and unlike. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ChooseBenchmark {
  private static final SetUp USUAL = new SetUp(100, 1100, 600, 600, 0);
  private static final SetUp BUTT = new SetUp(700, 1450, 1075, 1075, 0);
  private static final int ORDERS = 200;

  /** How many kinds of ask the orders have between them; 1: all ask for the same. */
  @Param({"1", "5", "200"})
  private int kinds;

  /** Whether the butt is asked for too. */
  @Param({"false", "true"})
  private boolean asksBeside;

  private List<Candidate> rack;
  private List<Candidate> smallRack;
  private ChanceTable table;

  /** Invented, always the same. */
  @Setup(Level.Trial)
  public void fill() {
    Random random = new Random(1);
    rack = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      rack.add(candidate(String.format("25-%05d", i), random));
    }
    smallRack = rack.subList(0, 2_000);
    table = ChanceTable.of(contests());
  }

  private static Candidate candidate(String tag, Random random) {
    double more = 0.5 * random.nextGaussian();
    List<Station> stations = new ArrayList<>();
    for (int k = 0; k < 16; k++) {
      double depth = 13.2 + more + 18.3 * k / 15 + 0.03 * random.nextGaussian();
      stations.add(new Station(99.4 * k, depth, depth + 0.03 * random.nextGaussian()));
    }
    return new Candidate(
        tag,
        BlankWood.ofOneWood(
            new Taper(SectionShape.ELLIPSE, stations, 1492),
            420 + 20 * random.nextGaussian(),
            ModulusAlong.constant(new Estimate(12300 + 800 * random.nextGaussian(), 60)),
            14));
  }

  private OrderTrial trial(int kind) {
    double wanted = 2.25 + 0.5 * (kind - kinds / 2.0) / kinds;
    FinishPlan plan =
        FinishPlan.bare(Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473));
    Ask beside = Ask.ofStiffness(BUTT, 19.5 * wanted / 2.1, 6);
    return new OrderTrial(
        new Order(
            "R",
            null,
            null,
            null,
            plan,
            Ask.ofStiffness(USUAL, wanted, 4),
            asksBeside ? List.of(beside) : List.of()),
        Sureness.USUAL);
  }

  private List<ChanceTable.Contest> contests() {
    List<ChanceTable.Contest> contests = new ArrayList<>();
    for (int i = 0; i < ORDERS; i++) {
      contests.add(new ChanceTable.Contest("R-" + i, trial(i % kinds), smallRack));
    }
    return contests;
  }

  @Benchmark
  public List<Standing> rankTenThousand() {
    return Ranking.of(trial(0), rack, RankingWeights.STIFFNESS_FIRST);
  }

  @Benchmark
  public ChanceTable chancesOfAllOrders() {
    return ChanceTable.of(contests());
  }

  @Benchmark
  public Allocation pairAllOrders() {
    return Allocator.greatest(table);
  }
}
