package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sagwright.bench.RunTrace;
import sagwright.bench.TestSnapshot;
import sagwright.drawing.FittedLine;
import sagwright.drawing.PlottedRun;
import sagwright.job.LaidBlank;
import sagwright.job.TestedRun;
import sagwright.run.HandReadings;
import sagwright.run.Readings;
import sagwright.run.StiffnessFit;

/** Puts the runs of a blank on the plot. */
final class CurveViews {
  /** More points than a plot has pixels are not drawn. */
  private static final int MOST_PLOTTED = 1500;

  private static final int EARLIER_RUNS = 3;

  private CurveViews() {}

  /** Room for the bend: what the target load would give a soft shaft of this shape. */
  static double greatestMm(LaidBlank laid) {
    double stiffness =
        laid.latestHere()
            .map(t -> t.evaluation().fit().stiffnessNPerMm())
            .orElseGet(laid::expectedStiffnessNPerMm);
    return 1.2 * laid.limits().targetN() / stiffness;
  }

  static BenchView.Curves of(BenchState state, TestSnapshot test) {
    if (state.laid() == null) {
      return new BenchView.Curves(List.of(), null, Double.NaN, 8, 22);
    }
    List<PlottedRun> plotted = new ArrayList<>();
    double greatestN = state.laid().limits().targetN();
    double greatestMm = greatestMm(state.laid()) / 1.2;
    List<TestedRun> runs = state.laid().runsAsItIs();
    for (TestedRun run : runs.subList(Math.max(0, runs.size() - EARLIER_RUNS), runs.size())) {
      boolean isShown = test == null && state.shown() != null && run.isSameRunAs(state.shown());
      if (!isShown) {
        plotted.add(plotted(run, PlottedRun.Kind.EARLIER));
      }
    }
    FittedLine line = null;
    if (test != null) {
      PlottedRun live = live(test.trace());
      plotted.add(live);
      line = LiveLine.of(live.deflectionMm(), live.loadN(), state.laid().limits().targetN());
      greatestN = Math.max(greatestN, test.greatestLoadN());
    } else if (state.shown() != null) {
      boolean byHand = state.shown().readings() instanceof HandReadings;
      plotted.add(
          plotted(state.shown(), byHand ? PlottedRun.Kind.HAND_READ : PlottedRun.Kind.CURRENT));
      line = line(state.shown().evaluation().fit());
    }
    for (PlottedRun run : plotted) {
      for (int i = 0; i < run.loadN().length; i++) {
        greatestN = Math.max(greatestN, run.loadN()[i]);
        greatestMm = Math.max(greatestMm, run.deflectionMm()[i]);
      }
    }
    return new BenchView.Curves(
        plotted, line, state.laid().limits().targetN(), greatestMm * 1.12, greatestN * 1.1);
  }

  private static PlottedRun live(RunTrace trace) {
    int step = 1 + trace.size() / MOST_PLOTTED;
    int[] at = IntStream.range(0, trace.size()).filter(i -> i % step == 0).toArray();
    return new PlottedRun(
        IntStream.of(at).mapToDouble(trace::deflectionMm).toArray(),
        IntStream.of(at).mapToDouble(trace::loadN).toArray(),
        PlottedRun.Kind.CURRENT);
  }

  private static PlottedRun plotted(TestedRun run, PlottedRun.Kind kind) {
    StiffnessFit fit = run.evaluation().fit();
    Readings readings = run.readings();
    int n = readings.loadN().length;
    int step = 1 + n / MOST_PLOTTED;
    int[] at = IntStream.range(0, n).filter(i -> i % step == 0).toArray();
    return new PlottedRun(
        IntStream.of(at)
            .mapToDouble(i -> readings.deflectionMm()[i] - fit.restDeflectionMm())
            .toArray(),
        IntStream.of(at).mapToDouble(i -> readings.loadN()[i] - fit.restLoadN()).toArray(),
        kind);
  }

  private static FittedLine line(StiffnessFit fit) {
    return new FittedLine(
        fit.stiffnessNPerMm(),
        fit.loadAtZeroDeflectionN()
            + fit.stiffnessNPerMm() * fit.restDeflectionMm()
            - fit.restLoadN(),
        fit.windowFromN(),
        fit.windowToN());
  }
}
