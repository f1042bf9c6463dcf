package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sagwright.beam.SetUp;
import sagwright.finish.BlankWood;
import sagwright.modulus.Instrument;
import sagwright.modulus.ModulusAlong;
import sagwright.modulus.Shaft;
import sagwright.survey.DifferentShaftsException;
import sagwright.survey.NextSetUp;
import sagwright.survey.RepeatSeries;
import sagwright.survey.SeriesAnswer;
import sagwright.survey.SeriesWarning;
import sagwright.survey.SurveyProblem;
import sagwright.survey.SurveyRun;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/**
 * What the runs of one blank that count show together: docs/contract.md, sections 7 and 8. Only
 * runs on the shaft as it was at the newest of them are taken, for turning takes wood away.
 *
 * @param runs of that shaft, oldest first; one or more
 * @param survey null for a single run
 * @param repeats those at one set-up, the newest run's unless another was asked for, turned or not,
 *     oldest first; one or more
 * @param series what the repeats show; null for a single one, and for a shaft that is spliced
 * @param next what to measure next to learn most of the modulus along the shaft
 */
public record RunsTogether(
    List<TestedRun> runs,
    SurveyShaft.Answer survey,
    List<TestedRun> repeats,
    SeriesAnswer series,
    List<NextSetUp> next) {
  private static final int PROPOSALS = 2;

  public RunsTogether {
    runs = List.copyOf(runs);
    repeats = List.copyOf(repeats);
    next = List.copyOf(next);
  }

  /**
   * @param counting one or more, oldest first
   */
  static RunsTogether of(SurveyShaft surveyor, List<TestedRun> counting) {
    return of(surveyor, counting, counting.get(counting.size() - 1).setUp());
  }

  /**
   * @param counting one or more, oldest first
   * @param here whose repeats are asked for; where there are none, the newest run's
   */
  static RunsTogether of(SurveyShaft surveyor, List<TestedRun> counting, SetUp here) {
    TestedRun newest = counting.get(counting.size() - 1);
    Shaft shaft = newest.sheet().shaft();
    List<TestedRun> runs =
        counting.stream()
            .filter(run -> SurveyProblem.isSameShaft(run.sheet().shaft(), shaft))
            .toList();
    List<TestedRun> atHere = at(here, runs);
    List<TestedRun> repeats = atHere.isEmpty() ? at(newest.setUp(), runs) : atHere;
    boolean isSeries = repeats.size() > 1 && shaft.splice() == null;
    try {
      return new RunsTogether(
          runs,
          runs.size() > 1 ? surveyor.of(runs.stream().map(RunsTogether::sheet).toList()) : null,
          repeats,
          isSeries ? RepeatSeries.solve(SurveyProblem.of(surveyRuns(repeats))) : null,
          shaft.splice() == null ? NextSetUp.plan(surveyRuns(runs), PROPOSALS) : List.of());
    } catch (DifferentShaftsException e) {
      throw new IllegalStateException("runs of one shaft were chosen", e);
    }
  }

  private static List<TestedRun> at(SetUp setUp, List<TestedRun> runs) {
    return runs.stream().filter(run -> run.setUp().turnedBy(0).equals(setUp.turnedBy(0))).toList();
  }

  private static TestedSheet sheet(TestedRun run) {
    return new TestedSheet(run.sheet(), run.evaluation());
  }

  private static List<SurveyRun> surveyRuns(List<TestedRun> runs) {
    return runs.stream().map(run -> sheet(run).surveyRun()).toList();
  }

  /** The newest of the repeats. */
  public TestedRun newest() {
    return repeats.get(repeats.size() - 1);
  }

  /** Runs of the repeats that their series does not count. */
  public List<TestedRun> standingOut() {
    List<TestedRun> out = new ArrayList<>();
    for (int i = 0; series != null && i < repeats.size(); i++) {
      if (series.runs().get(i).setAside() != null) {
        out.add(repeats.get(i));
      }
    }
    return out;
  }

  /** Why a run stands out; null for one that does not. */
  public String whyItStandsOut(TestedRun run) {
    return standingOut().contains(run) ? series.runs().get(repeats.indexOf(run)).setAside() : null;
  }

  private List<TestedRun> counted() {
    List<TestedRun> out = standingOut();
    return repeats.stream().filter(run -> !out.contains(run)).toList();
  }

  /** The modulus at the repeats' set-up, by all repeats that count. */
  public Estimate modulusMPa() {
    return series != null
        ? series.modulusMPa()
        : new Estimate(
            newest().evaluation().modulusMPa(), newest().evaluation().modulusStdUncertaintyMPa());
  }

  /**
   * The shaft's stiffness at the repeats' set-up, mean over the repeats that count: what is each
   * run's own goes with the number of runs, the scales are common to all. A run's own is what its
   * line states, or the repeats' scatter where that is more.
   */
  public Estimate stiffnessNPerMm() {
    List<TestedRun> counted = counted();
    int n = counted.size();
    double mean = 0;
    double stated = 0;
    for (TestedRun run : counted) {
      double k = run.evaluation().shaftStiffnessNPerMm();
      mean += k / n;
      double line = run.evaluation().fit().lineUncertaintyNPerMm() / stiffnessShown(run);
      stated += k * k * line * line / n;
    }
    double scatter = 0;
    for (TestedRun run : counted) {
      double off = run.evaluation().shaftStiffnessNPerMm() - mean;
      scatter += n > 1 ? off * off / (n - 1) : 0;
    }
    Instrument instrument = newest().sheet().instrument();
    double scales =
        mean
            / 100
            * Math.hypot(
                instrument.loadScaleUncertaintyPercent(),
                instrument.gaugeScaleUncertaintyPercent());
    return new Estimate(mean, Math.sqrt(Math.max(stated, scatter) / n + scales * scales));
  }

  private static double stiffnessShown(TestedRun run) {
    return run.evaluation().fit().stiffnessNPerMm();
  }

  /**
   * What a blank with these runs gives to the shaft that is to come out of it.
   *
   * @param now its shape and mass now
   */
  public BlankWood wood(Shaft now) {
    BlankWood surveyed = survey == null ? null : survey.wood();
    return new BlankWood(
        now.taper(),
        now.massG(),
        surveyed == null ? ModulusAlong.constant(modulusMPa()) : surveyed.modulusMPa(),
        surveyed == null ? newest().sheet().ratio().value() : surveyed.modulusToShearRatio(),
        now.splice() != null);
  }

  /** What was found amiss while the runs were recorded, of the newest first. */
  public List<Warning> ofBench() {
    return IntStream.iterate(runs.size() - 1, i -> i >= 0, i -> i - 1)
        .mapToObj(runs::get)
        .flatMap(run -> run.ofBench().stream())
        .distinct()
        .toList();
  }

  /** What the reader should know of how the runs stand together. */
  public List<Warning> warnings() {
    Stream<Warning> ofSeries = series == null ? Stream.empty() : series.warnings().stream();
    Stream<Warning> ofSurvey =
        survey == null ? Stream.empty() : survey.survey().warnings().stream();
    return Stream.concat(ofSeries, ofSurvey)
        .filter(w -> !(w instanceof SeriesWarning.RunSetAside)) // named by standingOut()
        .distinct()
        .toList();
  }
}
