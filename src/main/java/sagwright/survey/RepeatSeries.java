package sagwright.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import sagwright.beam.SetUp;
import sagwright.uncertainty.GrubbsTest;
import sagwright.uncertainty.Warning;

/**
 * Repeats of one set-up on one shaft, turned between them or not.
 *
 * <p>Out-of-round is in each run's modulus already, by the calipers (docs/contract.md, section 2).
 * What is left between the turns is fitted as E₀·(1 + a·cos 2φ + b·sin 2φ) where three turns or
 * more allow it, and counts where luck would give as much less than once in a hundred times.
 *
 * <p><b>A run that stands out</b> must do so by two tests. First, it lies further from what the
 * others foretell than its stated uncertainty allows: the standardised difference passes the limit
 * that the greatest of n normal ones passes once in a hundred times (known standard deviation,
 * Bonferroni). Second, with five runs or more, Grubbs' test at 5 % finds it apart from the others'
 * own scatter, so that a bench that simply repeats worse than stated loses no run; with fewer that
 * test sees nothing. One run is set aside at the most, and only where two others agree; where the
 * turns explain the runs, grain is believed before a bad run.
 */
public final class RepeatSeries {
  private static final double BAD_RUN_LEVEL = 0.01;
  private static final double GRUBBS_LEVEL = 0.05;
  private static final double SURENESS = 0.99;
  private static final double FITS = 0.95;
  private static final int LEAST_RUNS_TO_SET_ASIDE = 3;

  private final List<SurveyRun> runs;
  private final SurveyGround all;

  private RepeatSeries(List<SurveyRun> runs) {
    this.runs = runs;
    this.all = SurveyGround.of(runs);
  }

  /**
   * @param problem runs of one set-up but for the turn
   * @throws IllegalArgumentException where the positions differ
   */
  public static SeriesAnswer solve(SurveyProblem problem) {
    SetUp first = problem.runs().get(0).test().setUp().positions().turnedBy(0);
    for (SurveyRun run : problem.runs()) {
      if (!run.test().setUp().positions().turnedBy(0).equals(first)) {
        throw new IllegalArgumentException("the runs of a series share one set-up");
      }
    }
    return new RepeatSeries(problem.runs()).solve();
  }

  private SeriesAnswer solve() {
    TurnFit fit = TurnFit.of(all, turns(all));
    int bad = fit.grainExplains(FITS) ? -1 : standsOut();
    SurveyGround kept = bad < 0 ? all : all.without(bad);
    if (bad >= 0) {
      fit = TurnFit.of(kept, turns(kept));
    }
    List<Warning> warnings = new ArrayList<>();
    if (bad >= 0) {
      warnings.add(new SeriesWarning.RunSetAside(bad, runs.size()));
    }
    if (fit.worseThanStated(SURENESS)) {
      warnings.add(
          new SurveyWarning.PoorRepeats(fit.standardDeviationMPa(), meanOf(kept.independentMPa())));
    }
    if (fit.hasGrain() && fit.degreesOfFreedom() == 0) {
      warnings.add(new SeriesWarning.GrainOrBadRun());
    }
    return new SeriesAnswer(
        fit.modulusMPa(SURENESS),
        fit.degreesOfFreedom() > 0 ? fit.standardDeviationMPa() : null,
        fit.degreesOfFreedom(),
        turnedRuns(fit.meanMPa(), bad),
        ShapeEffect.of(runs.get(0).test()),
        fit.stiffness(),
        fit.grain(),
        warnings);
  }

  private static double[] turns(SurveyGround ground) {
    return ground.runs().stream().mapToDouble(r -> r.setUp().turnDegrees()).toArray();
  }

  private static double meanOf(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  /** Which run does not belong, from 0; −1 where all do. */
  private int standsOut() {
    int n = all.size();
    if (n < LEAST_RUNS_TO_SET_ASIDE) {
      return -1;
    }
    FittedModel mean = all.fit(ModelShape.ONE);
    double[] out = StandingOut.standardised(all, mean);
    int furthest =
        IntStream.range(0, n).reduce(0, (i, j) -> Math.abs(out[j]) > Math.abs(out[i]) ? j : i);
    double limit =
        new NormalDistribution(null, 0, 1)
            .inverseCumulativeProbability(1 - BAD_RUN_LEVEL / (2 * n));
    if (Math.abs(out[furthest]) <= limit) {
      return -1;
    }
    if (n >= GrubbsTest.LEAST_VALUES_TO_SEE) {
      double[] moduli = all.runs().stream().mapToDouble(RunObservation::modulusMPa).toArray();
      GrubbsTest grubbs = GrubbsTest.of(moduli, GRUBBS_LEVEL);
      return grubbs.standsOut() && grubbs.index() == furthest ? furthest : -1;
    }
    SurveyGround others = all.without(furthest);
    return TurnFit.of(others, turns(others)).meanFits(FITS) ? furthest : -1;
  }

  private List<SeriesAnswer.TurnedRun> turnedRuns(double meanMPa, int bad) {
    double[] perModulus = new double[runs.size()];
    for (int i = 0; i < perModulus.length; i++) {
      perModulus[i] =
          runs.get(i).evaluation().shaftStiffnessNPerMm() / runs.get(i).evaluation().modulusMPa();
    }
    double meanPerModulus = meanOf(perModulus);
    List<SeriesAnswer.TurnedRun> turned = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      double modulus = runs.get(i).evaluation().modulusMPa();
      turned.add(
          new SeriesAnswer.TurnedRun(
              runs.get(i).test().setUp().positions().turnDegrees(),
              runs.get(i).evaluation().shaftStiffnessNPerMm(),
              modulus,
              100 * (perModulus[i] / meanPerModulus - 1),
              100 * (modulus / meanMPa - 1),
              i == bad ? reason(modulus, meanMPa) : null));
    }
    return turned;
  }

  private String reason(double modulusMPa, double meanMPa) {
    return String.format(
        Locale.ROOT,
        "its modulus lies %.1f %% from the other runs', more than its uncertainty allows%s",
        100 * (modulusMPa / meanMPa - 1),
        runs.size() >= GrubbsTest.LEAST_VALUES_TO_SEE
            ? ", and Grubbs' test at 5 % finds it apart from them"
            : "");
  }
}
