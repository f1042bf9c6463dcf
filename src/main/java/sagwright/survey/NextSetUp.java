package sagwright.survey;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import sagwright.beam.Flexibility;
import sagwright.beam.ListeningBand;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;
import sagwright.modulus.PositionSensitivity;

/**
 * A set-up that would teach most about the modulus along a shaft, by an A-optimal Bayesian design
 * (Chaloner and Verdinelli, Bayesian Experimental Design: A Review, 1995, 2.1): of all candidates
 * the one that brings the mean variance of the modulus along the shaft down furthest, to first
 * order.
 *
 * <p>What is known before any run: the modulus of each of {@value #PARTS} parts lies 10 % about the
 * shaft's mean, like its neighbours by exp(−distance/third of the length), the mean itself open
 * within 30 % (common practice, no source). A run sees the parts by its listening band, with what
 * is independent in its uncertainty. Candidates: load and gauge at mid-span, supports on a grid of
 * a fifteenth of the length, the shaft's centre of mass between them.
 *
 * @param setUp load and gauge at mid-span, turn 0°
 * @param uncertaintyBeforePercent root mean square along the shaft before this run
 * @param uncertaintyAfterPercent the same after it
 */
public record NextSetUp(
    SetUp setUp, double uncertaintyBeforePercent, double uncertaintyAfterPercent) {
  static final int PARTS = 15;
  private static final double PRIOR = 0.10;
  private static final double PRIOR_OF_MEAN = 0.30;
  private static final int LEAST_SPAN_PARTS = 3;

  /**
   * The next set-ups to try, in order: each is the best with those before it counted as done.
   *
   * @param runs one or more, of one shaft
   */
  public static List<NextSetUp> plan(List<SurveyRun> runs, int howMany) {
    RealMatrix knowledge = prior();
    double line = 0;
    for (SurveyRun run : runs) {
      RunObservation observed = new RunObservation(run);
      double u = observed.independentUncertaintyMPa() / observed.modulusMPa();
      knowledge =
          after(knowledge, heard(observed.taper(), observed.setUp(), observed.ratio()), u * u);
      line +=
          run.evaluation().fit().lineUncertaintyNPerMm()
              / run.evaluation().fit().stiffnessNPerMm()
              / runs.size();
    }
    List<Candidate> candidates = candidates(runs.get(runs.size() - 1), line);
    List<NextSetUp> plan = new ArrayList<>();
    for (int i = 0; i < howMany; i++) {
      RealMatrix best = null;
      SetUp bestSetUp = null;
      for (Candidate candidate : candidates) {
        RealMatrix then = after(knowledge, candidate.heard(), candidate.variance());
        if (best == null || then.getTrace() < best.getTrace()) {
          best = then;
          bestSetUp = candidate.setUp();
        }
      }
      plan.add(new NextSetUp(bestSetUp, percent(knowledge), percent(best)));
      knowledge = best;
    }
    return plan;
  }

  private static double percent(RealMatrix knowledge) {
    return 100 * Math.sqrt(knowledge.getTrace() / PARTS);
  }

  private static RealMatrix prior() {
    RealMatrix prior = MatrixUtils.createRealMatrix(PARTS, PARTS);
    for (int i = 0; i < PARTS; i++) {
      for (int j = 0; j < PARTS; j++) {
        double likeness = Math.exp(-3.0 * Math.abs(i - j) / PARTS);
        prior.setEntry(i, j, PRIOR * PRIOR * likeness + PRIOR_OF_MEAN * PRIOR_OF_MEAN);
      }
    }
    return prior;
  }

  /** The share of the answer that comes from each part: ∂ln E(shown)/∂ln E(part). */
  private static double[] heard(Taper taper, SetUp setUp, double ratio) {
    ListeningBand band = ListeningBand.of(taper, setUp, ratio);
    double[] heard = new double[PARTS];
    for (int i = 0; i < PARTS; i++) {
      heard[i] =
          band.shareBetween(taper.lengthMm() * i / PARTS, taper.lengthMm() * (i + 1.0) / PARTS);
    }
    return heard;
  }

  /** What is known after a run that sees the parts so, with such a relative variance. */
  private static RealMatrix after(RealMatrix knowledge, double[] heard, double variance) {
    double[] carried = knowledge.operate(heard);
    double seen = variance;
    for (int i = 0; i < PARTS; i++) {
      seen += heard[i] * carried[i];
    }
    RealMatrix column = MatrixUtils.createColumnRealMatrix(carried);
    return knowledge.subtract(column.multiply(column.transpose()).scalarMultiply(1 / seen));
  }

  /** A set-up, the share that it hears of each part, and its relative variance. */
  private record Candidate(SetUp setUp, double[] heard, double variance) {}

  private static List<Candidate> candidates(SurveyRun like, double line) {
    RunObservation observed = new RunObservation(like);
    Taper taper = observed.taper();
    double r = observed.ratio();
    double positionMm = like.test().setUp().positionUncertaintyMm();
    double step = taper.lengthMm() / PARTS;
    double centre = taper.centreOfMassMm();
    List<Candidate> candidates = new ArrayList<>();
    for (int from = 0; from < PARTS; from++) {
      for (int to = from + LEAST_SPAN_PARTS; to <= PARTS; to++) {
        double a = 10 * Math.rint(Math.max(from * step, END_MM) / 10);
        double b = 10 * Math.rint(Math.min(to * step, taper.lengthMm() - END_MM) / 10);
        if (a < centre && centre < b) {
          SetUp setUp = new SetUp(a, b, (a + b) / 2, (a + b) / 2, 0);
          double variance = line * line + positionVariance(taper, setUp, r, positionMm);
          candidates.add(new Candidate(setUp, heard(taper, setUp, r), variance));
        }
      }
    }
    return candidates;
  }

  /**
   * A support this near an end lets a shaft slip off when it bends (common practice, no source).
   */
  private static final double END_MM = 20;

  private static double positionVariance(Taper taper, SetUp at, double ratio, double positionMm) {
    double here = Flexibility.of(taper, at).perMm(ratio);
    PositionSensitivity slopes =
        PositionSensitivity.of(at, moved -> Flexibility.of(taper, moved).perMm(ratio) / here);
    double squares =
        slopes.supportA() * slopes.supportA()
            + slopes.supportB() * slopes.supportB()
            + slopes.load() * slopes.load()
            + slopes.gauge() * slopes.gauge();
    return squares * positionMm * positionMm;
  }
}
