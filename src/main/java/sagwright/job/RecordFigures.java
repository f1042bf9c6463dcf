package sagwright.job;

import sagwright.sheet.JsonLine;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.Grade;
import sagwright.workshop.Run;

/** Figures out of the answers that a record keeps. */
public final class RecordFigures {
  private RecordFigures() {}

  /** The shaft's own stiffness in N/mm; only for a run that gave an answer. */
  public static Estimate stiffness(Run run) {
    JsonLine answer = JsonLine.parse(run.outcome().answer());
    return new Estimate(
        answer.number("shaftStiffnessNPerMm"), answer.number("stiffnessStdUncertaintyNPerMm"));
  }

  /** The mass of a caliper entry in g, null where it was not weighed. */
  public static Double massG(CaliperEntry entry) {
    return JsonLine.parse(entry.document()).object("shaft").number("massG");
  }

  /** A grade's word and the chance behind it. */
  public record Graded(String word, double chance) {}

  public static Graded of(Grade grade) {
    JsonLine answer = JsonLine.parse(grade.answer());
    return new Graded(answer.text("grade"), answer.number("chanceWithinTolerance"));
  }
}
