package sagwright.job;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sagwright.beam.SetUp;
import sagwright.modulus.Shaft;
import sagwright.survey.SurveyProblem;
import sagwright.workshop.Blank;

/**
 * Whether a new result suits the blank that is laid: by what that blank has shown before, and by
 * what others have that were just handled.
 */
public final class RightBlank {
  /** A stiffness or a mass that is off the blank's own by more is questioned. */
  public static final double DOUBT_PERCENT = 5;

  /** One blank tested twice at one turn comes closer to itself than this; common practice. */
  private static final double REPEATS_PERCENT = 2;

  /** Another blank fits where the result is as near as this to what it has shown. */
  private static final double FITS_PERCENT = 1.5;

  /**
   * A blank without a record is held against the one tested just before it. Two blanks of one lot
   * are seldom so near each other; one blank under two tags is.
   */
  private static final double SAME_AS_BEFORE_PERCENT = 0.5;

  /** Positions nearer than this count as the same set-up, turns as the same turn. */
  private static final double SAME_PLACE_MM = 2;

  private static final double SAME_TURN_DEGREES = 10;

  private RightBlank() {}

  /** A blank that was laid or tested a short while ago, with its runs that count, oldest first. */
  public record Handled(Blank blank, List<TestedRun> runs) {
    public Handled {
      runs = List.copyOf(runs);
    }
  }

  /**
   * Why it may be another blank.
   *
   * @param stiffnessPercent off its last test; null where there is none on this shaft and set-up
   * @param massPercent its density off that at its last test; null where one of them is not known
   * @param better another that fits better; null for none
   */
  public record Doubt(Double stiffnessPercent, Double massPercent, Better better) {
    public boolean isOfStiffness() {
      return isDoubtful(stiffnessPercent);
    }

    public boolean isOfMass() {
      return isDoubtful(massPercent);
    }
  }

  /**
   * Another blank that fits better.
   *
   * @param percent the new result off its own
   */
  public record Better(Blank blank, double percent) {}

  /**
   * @param before as it was laid, before this run
   * @param others handled a short while ago, the last one first
   */
  public static Optional<Doubt> of(TestedRun now, LaidBlank before, List<Handled> others) {
    List<TestedRun> own =
        before.runs().stream()
            .filter(run -> run.run().id() != now.run().id())
            .filter(run -> SurveyProblem.isSameShaft(run.shaft(), now.shaft()))
            .filter(run -> isSamePlace(run.setUp(), now.setUp()))
            .toList();
    Double stiffness = own.isEmpty() ? null : percent(now, own.get(own.size() - 1));
    Doubt doubt = new Doubt(stiffness, massPercent(now, before), better(now, own, others));
    return doubt.isOfStiffness() || doubt.isOfMass() || doubt.better() != null
        ? Optional.of(doubt)
        : Optional.empty();
  }

  private static Better better(TestedRun now, List<TestedRun> own, List<Handled> others) {
    double mostPercent = SAME_AS_BEFORE_PERCENT;
    List<Handled> asked = others.subList(0, Math.min(1, others.size()));
    if (!own.isEmpty()) {
      double nearest = own.stream().mapToDouble(run -> Math.abs(percent(now, run))).min().orElse(0);
      boolean wasAtThisTurn = own.stream().anyMatch(run -> isSameTurn(run.setUp(), now.setUp()));
      if (nearest <= (wasAtThisTurn ? REPEATS_PERCENT : DOUBT_PERCENT)) {
        return null;
      }
      mostPercent = FITS_PERCENT;
      asked = others;
    }
    double most = mostPercent;
    return asked.stream()
        .flatMap(other -> fit(now, other))
        .filter(fit -> Math.abs(fit.percent()) <= most)
        .min(Comparator.comparingDouble(fit -> Math.abs(fit.percent())))
        .orElse(null);
  }

  private static Stream<Better> fit(TestedRun now, Handled other) {
    return other.runs().stream()
        .filter(run -> isSamePlace(run.setUp(), now.setUp()))
        .reduce((older, newer) -> newer)
        .map(run -> new Better(other.blank(), percent(now, run)))
        .stream();
  }

  private static double percent(TestedRun now, TestedRun earlier) {
    double was = earlier.evaluation().shaftStiffnessNPerMm();
    return 100 * (now.evaluation().shaftStiffnessNPerMm() - was) / was;
  }

  /** By density, so that wood that was turned off does not count; null where it is not known. */
  private static Double massPercent(TestedRun now, LaidBlank before) {
    return before.runs().stream()
        .filter(run -> run.run().id() != now.run().id() && run.shaft().massG() != null)
        .reduce((older, newer) -> newer)
        .filter(run -> now.shaft().massG() != null)
        .map(run -> 100 * (densityRatio(now.shaft(), run.shaft()) - 1))
        .orElse(null);
  }

  /** Without their water where both moistures are known. */
  private static double densityRatio(Shaft now, Shaft was) {
    double ratio = now.densityKgM3() / was.densityKgM3();
    return now.moisturePercent() == null || was.moisturePercent() == null
        ? ratio
        : ratio * (100 + was.moisturePercent()) / (100 + now.moisturePercent());
  }

  private static boolean isDoubtful(Double percent) {
    return percent != null && Math.abs(percent) > DOUBT_PERCENT;
  }

  private static boolean isSamePlace(SetUp a, SetUp b) {
    return Math.abs(a.supportAMm() - b.supportAMm()) < SAME_PLACE_MM
        && Math.abs(a.supportBMm() - b.supportBMm()) < SAME_PLACE_MM
        && Math.abs(a.loadMm() - b.loadMm()) < SAME_PLACE_MM
        && Math.abs(a.gaugeMm() - b.gaugeMm()) < SAME_PLACE_MM;
  }

  private static boolean isSameTurn(SetUp a, SetUp b) {
    double apart = Math.abs(a.turnDegrees() - b.turnDegrees()) % 360;
    return Math.min(apart, 360 - apart) < SAME_TURN_DEGREES;
  }
}
