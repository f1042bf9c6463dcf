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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sagwright.beam.Flexibility;
import sagwright.beam.FlexibilityGradient;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;

/** The beam alone: a shaft of two stations, and one measured every 100 mm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BeamBenchmark {
  private final SetUp setUp = new SetUp(100, 1100, 600, 600, 0);
  private final Taper twoStations =
      new Taper(
          SectionShape.ELLIPSE,
          List.of(new Station(0, 12.50, 12.48), new Station(1490, 31, 31)),
          1490);
  private final Taper sixteenStations = sixteen();

  private static Taper sixteen() {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      stations.add(new Station(99 * i, 12.5 + 1.23 * i, 12.48 + 1.235 * i));
    }
    return new Taper(SectionShape.ELLIPSE, stations, 1490);
  }

  @Benchmark
  public double flexibilityTwoStations() {
    return Flexibility.of(twoStations, setUp).perMm(14);
  }

  @Benchmark
  public double flexibilitySixteenStations() {
    return Flexibility.of(sixteenStations, setUp).perMm(14);
  }

  @Benchmark
  public double gradientSixteenStations() {
    return FlexibilityGradient.of(sixteenStations, setUp).byDepth(8, 14);
  }
}
