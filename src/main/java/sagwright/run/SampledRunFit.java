package sagwright.run;

import java.util.ArrayList;
import java.util.List;
import sagwright.uncertainty.Warning;

/** The line through the straight part of the loading branch of a run that came sample by sample. */
final class SampledRunFit {
  private static final int LEAST_SAMPLES = 8;
  private static final double MOST_WILD = 0.25;
  private static final double MANY_WILD = 0.08;
  private static final double LEAST_COURSE_CORRELATION_SQUARED = 0.9;
  private static final double LEAST_WHOLE_CORRELATION_SQUARED = 0.75;
  private static final double MOST_RELATIVE_UNCERTAINTY = 0.3;
  private static final double SCATTER_WORTH_SAYING = 3;
  private static final double STEEPER_WORTH_SAYING = 0.03;

  /** What stands out of the course of a reading by more of its sigmas was not kept. */
  private static final double KEPT_SIGMAS = 6;

  private static final double MAY_STAND_OFF = 0.02;

  private final FreshReadings fresh;
  private final ReadingUncertainty uncertainty;
  private final double[] load;
  private final double[] deflection;
  private final LoadCourse course;
  private final LoadingBranch branch;
  private final StraightPart part;
  private final WindowLine window;
  private final YorkLine line;
  private final List<Warning> warnings = new ArrayList<>();

  private SampledRunFit(Samples run, ReadingUncertainty uncertainty) throws PoorRunException {
    requireEnough(run.size());
    this.uncertainty = uncertainty;
    fresh = FreshReadings.of(run);
    load = fresh.loadN();
    deflection = fresh.deflectionMm();
    requireEnough(load.length);
    course = LoadCourse.of(load, deflection, uncertainty);
    branch = new LoadingBranch(load, deflection, course, uncertainty);
    requireFewWild();
    part = new StraightPartSearch(branch, uncertainty).find();
    window = new WindowLine(load, deflection, branch, part, uncertainty);
    line = window.line();
    requireLine();
  }

  static StiffnessFit of(Samples run, ReadingUncertainty uncertainty) throws PoorRunException {
    return new SampledRunFit(run, uncertainty).answer(run.size());
  }

  private StiffnessFit answer(int samples) {
    double greatestN = greatestLoadN();
    double fromN = window.leastLoadN() - course.zeroN();
    double toN = window.greatestLoadN() - course.zeroN();
    Hysteresis hysteresis = new Hysteresis(load, deflection, course, line.slope(), greatestN);
    warnings.addAll(fresh.warnings());
    if (!course.hasRest()) {
      warnings.add(new RunWarning.NoRest());
    }
    if (part.bends()) {
      double change = 100 * part.slopeChange() / line.slope();
      warnings.add(new RunWarning.BranchBends(fromN, toN, greatestN, change));
    }
    if (part.slip() != null) {
      double atN = branch.progress(part.slip().block()) * course.rangeN();
      warnings.add(new RunWarning.Slipped(atN, part.slip().jumpMm(), fromN, toN));
    }
    double uncertaintyNPerMm = lineUncertainty();
    warnOfScatter();
    if (hysteresis.broke()) {
      warnings.add(new RunWarning.Broke(greatestN));
    }
    return new StiffnessFit(
        line.slope(),
        uncertaintyNPerMm,
        line.intercept(),
        course.zeroN(),
        course.restDeflectionMm(),
        fromN,
        toN,
        usedOfRun(samples),
        window.setAside(),
        hysteresisPercent(hysteresis),
        greatestN,
        warnings);
  }

  /**
   * York's, or the same times √(S/(n−2)), the larger; n are the samples, or the means of stretches
   * of them where the samples' scatter does not average out. A bend comes on top, taken as
   * rectangular.
   */
  private double lineUncertainty() {
    double own = line.slopeUncertainty();
    SlowScatter slow =
        new SlowScatter(branch, part.fromBlock(), part.toBlock(), line.slope(), window::isUsed);
    double variance = window.sampleVarianceN2();
    if (part.bends()) {
      return Math.hypot(
          own * Math.sqrt(slow.inflation(variance)), part.slopeChange() / Math.sqrt(3));
    }
    double factor = Math.sqrt(slow.inflationAboutLine(variance));
    if (factor > 1) {
      warnings.add(new RunWarning.ScattersSlowly(factor));
    }
    return own * factor;
  }

  private void warnOfScatter() {
    double steeper = steeperBelow();
    if (!part.bends() && steeper > STEEPER_WORTH_SAYING) {
      warnings.add(new RunWarning.SteeperBelow(100 * steeper));
    }
    int inWindow = window.setAside() + line.points();
    if (window.setAside() > 2 && window.setAside() > MANY_WILD * inWindow) {
      warnings.add(new RunWarning.ManyWild(window.setAside(), inWindow));
    }
    boolean stated = uncertainty.loadN() > 0 || uncertainty.gaugeMm() > 0;
    if (stated && line.scatterFactor() > SCATTER_WORTH_SAYING) {
      warnings.add(new RunWarning.ScattersMore(line.scatterFactor()));
    }
  }

  /** By which share the branch is steeper from 10 to 40 % of the greatest load, EN 408's rows. */
  private double steeperBelow() {
    int from = branch.blockAt(0.1);
    int to = branch.blockAt(0.4);
    if (branch.sums().samples(from, to) < 3) {
      return 0;
    }
    YorkLine below =
        YorkLine.ofEqualErrors(
            branch.sums().line(from, to), uncertainty.gaugeMm(), uncertainty.loadN());
    double more = below.slope() - line.slope();
    return more > below.slopeUncertainty() ? more / line.slope() : 0;
  }

  /** The greatest load kept, reckoned from the rest; one that stands out must suit the gauge. */
  private double greatestLoadN() {
    double mayStandOff =
        Math.max(
            KEPT_SIGMAS * Math.sqrt(window.sampleVarianceN2()), MAY_STAND_OFF * course.rangeN());
    return course
            .blocks()
            .greatestLoadKept(
                KEPT_SIGMAS * course.noiseN(),
                i -> load[i] - line.intercept() - line.slope() * deflection[i] <= mayStandOff)
        - course.zeroN();
  }

  private Double hysteresisPercent(Hysteresis hysteresis) {
    double noiseMm = Noise.sigma(deflection, deflection.length);
    double greatestMm =
        course.blocks().greatestDeflectionKept(KEPT_SIGMAS * noiseMm) - course.restDeflectionMm();
    Double gap = hysteresis.gapMm();
    return gap == null ? null : Double.valueOf(100 * gap / greatestMm);
  }

  private boolean[] usedOfRun(int samples) {
    boolean[] used = new boolean[samples];
    for (int i = 0; i < load.length; i++) {
      if (window.isUsed(i)) {
        used[fresh.sample(i)] = true;
      }
    }
    return used;
  }

  private static void requireEnough(int samples) throws PoorRunException {
    if (samples < LEAST_SAMPLES) {
      throw new PoorRunException(
          "too few samples: " + samples + ", at least " + LEAST_SAMPLES + " are needed");
    }
  }

  private void requireFewWild() throws PoorRunException {
    if (branch.wildSamples() > MOST_WILD * branch.size()) {
      throw new PoorRunException(
          "load and gauge lie on no line: "
              + branch.wildSamples()
              + " of "
              + branch.size()
              + " samples of the loading branch are wild");
    }
  }

  private void requireLine() throws PoorRunException {
    if (!(line.slope() > 0)) {
      throw new PoorRunException(
          "the deflection falls while the load rises: load and gauge show no stiffness");
    }
    boolean scattered =
        part.toBlock() - part.fromBlock() >= 6
            && branch.courseCorrelationSquared(part.fromBlock(), part.toBlock())
                < LEAST_COURSE_CORRELATION_SQUARED;
    if (part.bends()
        && branch.courseCorrelationSquared(0, branch.blockCount())
            < LEAST_WHOLE_CORRELATION_SQUARED) {
      scattered = true;
    }
    if (scattered || !(line.slopeUncertainty() <= MOST_RELATIVE_UNCERTAINTY * line.slope())) {
      throw new PoorRunException("load and gauge lie on no line");
    }
  }
}
