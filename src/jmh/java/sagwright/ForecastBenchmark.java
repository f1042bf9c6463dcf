package sagwright;

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
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.BlankWood;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.Forecast;
import sagwright.finish.ForecastRequest;
import sagwright.finish.Forecaster;
import sagwright.finish.PlanForecaster;
import sagwright.finish.Weight;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/**
 * The finished shaft of docs/contract.md, section 5, with everything in it: whole, and as a rack of
 * blanks is ranked, where the plan is worked out once and the frequency left out.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ForecastBenchmark {
  private final BlankWood blank =
      BlankWood.ofOneWood(
          BenchmarkedBend.TAPER,
          405.0,
          ModulusAlong.constant(new Estimate(BenchmarkedBend.MODULUS_MPA, 55)),
          14);
  private final FinishPlan plan =
      new FinishPlan(
          Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473),
          FinishPlan.ASSUMED_DIAMETER_UNCERTAINTY_MM,
          8.0,
          new Ferrule(9.5, 8, 8500),
          new Splice(1030, 4, 1120, 15500, 0),
          List.of(new Weight(1400, 1450, 12, 11340)),
          List.of(new Extra("joint", 740, 38)));
  private final List<SetUp> setUps =
      List.of(BenchmarkedBend.MIDDLE, new SetUp(700, 1450, 1075, 1075, 0));
  private final ForecastRequest request = new ForecastRequest(blank, plan, setUps, 2.25);
  private final PlanForecaster planned = new PlanForecaster(plan, setUps, 2.25);

  @Benchmark
  public Forecast whole() {
    return Forecaster.forecast(request);
  }

  @Benchmark
  public Forecast ofOneOfManyBlanks() {
    return planned.withoutFrequency(blank);
  }
}
