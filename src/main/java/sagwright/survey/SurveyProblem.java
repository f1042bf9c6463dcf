package sagwright.survey;

import java.util.List;
import sagwright.beam.Taper;
import sagwright.modulus.Shaft;

/** Two or more runs on one shaft, each with its own set-up. */
public final class SurveyProblem {
  private final List<SurveyRun> runs;

  private SurveyProblem(List<SurveyRun> runs) {
    this.runs = List.copyOf(runs);
  }

  /**
   * @param runs two or more, in the order in which they are to be named
   * @throws DifferentShaftsException where section, length, stations or splice are not those of the
   *     first
   * @throws IllegalArgumentException where there are fewer than two
   */
  public static SurveyProblem of(List<SurveyRun> runs) throws DifferentShaftsException {
    if (runs.size() < 2) {
      throw new IllegalArgumentException("a survey takes two runs or more");
    }
    for (int i = 1; i < runs.size(); i++) {
      String difference = difference(runs.get(0).test().shaft(), runs.get(i).test().shaft());
      if (difference != null) {
        throw new DifferentShaftsException(i, difference);
      }
    }
    return new SurveyProblem(runs);
  }

  /** Whether runs on both may be surveyed together. */
  public static boolean isSameShaft(Shaft first, Shaft other) {
    return difference(first, other) == null;
  }

  /** What tells one shaft from the other, named as a sheet names it; null where nothing does. */
  private static String difference(Shaft first, Shaft other) {
    Taper a = first.taper();
    Taper b = other.taper();
    if (a.shape() != b.shape()) {
      return "shaft.section differs from the first sheet's: not the same shaft";
    }
    if (!a.stations().equals(b.stations())) {
      return "shaft.stations differ from the first sheet's: not the same shaft, or measured anew";
    }
    if (a.lengthMm() != b.lengthMm()) {
      return "shaft.lengthMm differs from the first sheet's: not the same shaft";
    }
    boolean sameSplice =
        first.splice() == null ? other.splice() == null : first.splice().equals(other.splice());
    return sameSplice ? null : "shaft.splice differs from the first sheet's: not the same shaft";
  }

  public List<SurveyRun> runs() {
    return runs;
  }

  public Shaft shaft() {
    return runs.get(0).test().shaft();
  }
}
