package sagwright.command;

import java.util.List;
import sagwright.grade.AskGrade;
import sagwright.grade.Sureness;
import sagwright.job.RankBlanks;
import sagwright.job.RankBlanks.Ranked;
import sagwright.quantity.Figures;

/** Blanks for one order as a person reads them; every ± is 95 %. */
final class RankTable {
  private static final String ROW = "%-14s %-10s %8s  %-16s %8s %8s %8s%n";
  private static final String DASH = "–";

  private RankTable() {}

  static String of(RankBlanks.Answer answer, List<Ranked> shown, Sureness sureness) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            "for %s, best first by %s; ± is 95 %%%n",
            answer.order().number(), answer.weights().inWords()));
    if (shown.isEmpty()) {
      return text.append(String.format("no blank is free for it: import or enter some%n"))
          .toString();
    }
    text.append(
        String.format(ROW, "", "", "in 100", "stiffness N/mm", "spare mm", "weight g", "balance"));
    for (Ranked ranked : shown) {
      text.append(ranked.standing().canServe() ? serving(ranked, sureness) : cannot(ranked));
    }
    return text.toString();
  }

  private static String serving(Ranked ranked, Sureness sureness) {
    var graded = ranked.standing().graded();
    AskGrade grade = graded.grade();
    return String.format(
        ROW,
        ranked.standing().tag() + (ranked.state().promisedTo() == null ? "" : " *"),
        grade.verdict().word(),
        Figures.chancePercent(ranked.standing().chance(), sureness.chance()),
        Figures.withPlusMinus(
            grade.stiffnessNPerMm().value(), grade.stiffnessNPerMm().halfWidth95()),
        Figures.rounded(graded.forecast().cut().leastSpareMm(), 2),
        orDash(graded.forecast().massG()),
        orDash(graded.forecast().balanceFromButtMm()));
  }

  private static String cannot(Ranked ranked) {
    return String.format(
        "%-14s %s%n", ranked.standing().tag(), ranked.standing().obstacle().inWords());
  }

  private static String orDash(Double value) {
    return value == null ? DASH : Figures.rounded(value, 0);
  }
}
