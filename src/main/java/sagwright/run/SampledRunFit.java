package sagwright.run;

import java.util.ArrayList;
import java.util.List;
import sagwright.uncertainty.Warning;

/** The line through the straight part of the loading branch of a run that came sample by sample. */
final class SampledRunFit {
  private static final int LEAST_SAMPLES = 8;
  private static final double WILD_SIGMAS = 5;
  private static final double MOST_WILD = 0.25;
  private static final double MANY_WILD = 0.08;
  private static final double LEAST_COURSE_CORRELATION_SQUARED = 0.9;
  private static final double MOST_RELATIVE_UNCERTAINTY = 0.3;
  private static final double SCATTER_WORTH_SAYING = 3;
  private static final double STEEPER_WORTH_SAYING = 0.03;

  private final FreshReadings fresh;
  private final ReadingUncertainty uncertainty;
  private final double[] load;
  private final double[] deflection;
  private final boolean[] used;
  private int setAside;

  private SampledRunFit(Samples run, ReadingUncertainty uncertainty) throws PoorRunException {
    requireEnough(run.size());
    this.uncertainty = uncertainty;
    fresh = FreshReadings.of(run);
    load = fresh.loadN();
    deflection = fresh.deflectionMm();
    requireEnough(load.length);
    used = new boolean[load.length];
  }

  static StiffnessFit of(Samples run, ReadingUncertainty uncertainty) throws PoorRunException {
    SampledRunFit fit = new SampledRunFit(run, uncertainty);
    return fit.answer(new boolean[run.size()]);
  }

  private static void requireEnough(int samples) throws PoorRunException {
    if (samples < LEAST_SAMPLES) {
      throw new PoorRunException(
          "too few samples: " + samples + ", at least " + LEAST_SAMPLES + " are needed");
    }
  }

  private StiffnessFit answer(boolean[] usedOfRun) throws PoorRunException {
    LoadCourse course = LoadCourse.of(load, deflection, uncertainty);
    LoadingBranch branch = new LoadingBranch(load, deflection, course, uncertainty);
    if (branch.wildSamples() > MOST_WILD * branch.size()) {
      throw new PoorRunException(
          "load and gauge lie on no line: "
              + branch.wildSamples()
              + " of "
              + branch.size()
              + " samples of the loading branch are wild");
    }
    StraightPart part = new StraightPartSearch(branch, uncertainty).find();
    YorkLine line = lineThrough(branch, part);
    double lineUncertainty = Math.hypot(line.slopeUncertainty(), part.slopeChange() / Math.sqrt(3));
    requireLine(branch, part, line);
    double greatest = course.blocks().greatestLoadKept(load, 6 * course.noiseN()) - course.zeroN();
    Hysteresis hysteresis = new Hysteresis(load, deflection, course, line.slope(), greatest);
    Double gap = hysteresis.gapMm();
    double greatestMm =
        course
                .blocks()
                .greatestDeflectionKept(deflection, 6 * Noise.sigma(deflection, deflection.length))
            - course.restDeflectionMm();

    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < used.length; i++) {
      if (used[i]) {
        usedOfRun[fresh.sample(i)] = true;
        from = Math.min(from, load[i]);
        to = Math.max(to, load[i]);
      }
    }
    double fromN = from - course.zeroN();
    double toN = to - course.zeroN();
    List<Warning> warnings = new ArrayList<>(fresh.warnings());
    if (!course.hasRest()) {
      warnings.add(new RunWarning.NoRest());
    }
    if (part.bends()) {
      warnings.add(
          new RunWarning.BranchBends(
              fromN, toN, greatest, 100 * part.slopeChange() / line.slope()));
    }
    double steeper = steeperBelow(branch, line);
    if (!part.bends() && steeper > STEEPER_WORTH_SAYING) {
      warnings.add(new RunWarning.SteeperBelow(100 * steeper));
    }
    if (setAside > 2 && setAside > MANY_WILD * (setAside + line.points())) {
      warnings.add(new RunWarning.ManyWild(setAside, setAside + line.points()));
    }
    if (line.scatterFactor() > SCATTER_WORTH_SAYING) {
      warnings.add(new RunWarning.ScattersMore(line.scatterFactor()));
    }
    if (hysteresis.broke()) {
      warnings.add(new RunWarning.Broke(greatest));
    }
    return new StiffnessFit(
        line.slope(),
        lineUncertainty,
        line.intercept(),
        course.zeroN(),
        course.restDeflectionMm(),
        fromN,
        toN,
        usedOfRun,
        setAside,
        gap == null ? null : Double.valueOf(100 * gap / greatestMm),
        greatest,
        warnings);
  }

  /** York's line through the window's clean samples, once more without what lies wild of it. */
  private YorkLine lineThrough(LoadingBranch branch, StraightPart part) {
    for (int b = part.fromBlock(); b < part.toBlock(); b++) {
      for (int i = branch.start(b); i < branch.start(b + 1); i++) {
        used[i] = !branch.fallsBack(b) && branch.isClean(i);
        setAside += branch.isClean(i) ? 0 : 1;
      }
    }
    YorkLine line = york();
    int from = branch.start(part.fromBlock());
    int to = branch.start(part.toBlock());
    double[] apart = new double[to - from];
    int count = 0;
    for (int i = from; i < to; i++) {
      if (used[i]) {
        apart[count++] = Math.abs(load[i] - line.intercept() - line.slope() * deflection[i]);
      }
    }
    double stated = Math.hypot(uncertainty.loadN(), line.slope() * uncertainty.gaugeMm());
    double bound = WILD_SIGMAS * Math.max(stated, Noise.sigmaOfDeviations(apart, count));
    int before = setAside;
    for (int i = from; i < to; i++) {
      if (used[i] && Math.abs(load[i] - line.intercept() - line.slope() * deflection[i]) > bound) {
        used[i] = false;
        setAside++;
      }
    }
    return setAside == before ? line : york();
  }

  /** By which share the branch is steeper from 10 to 40 % of the greatest load, EN 408's rows. */
  private double steeperBelow(LoadingBranch branch, YorkLine line) {
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

  private YorkLine york() {
    return YorkLine.ofEqualErrors(
        LineSums.over(deflection, load, used), uncertainty.gaugeMm(), uncertainty.loadN());
  }

  private static void requireLine(LoadingBranch branch, StraightPart part, YorkLine line)
      throws PoorRunException {
    if (!(line.slope() > 0)) {
      throw new PoorRunException(
          "the deflection falls while the load rises: load and gauge show no stiffness");
    }
    boolean scattered =
        part.toBlock() - part.fromBlock() >= 6
            && branch.courseCorrelationSquared(part.fromBlock(), part.toBlock())
                < LEAST_COURSE_CORRELATION_SQUARED;
    if (scattered || !(line.slopeUncertainty() <= MOST_RELATIVE_UNCERTAINTY * line.slope())) {
      throw new PoorRunException("load and gauge lie on no line");
    }
  }
}
