package sagwright.choose;

import java.util.Comparator;
import java.util.List;

/**
 * Puts blanks in order, best first: docs/contract.md, section 7. By the chance that all that is
 * asked lies within its tolerance, then by nearness to the ask, then by spare, then by tag; what
 * cannot serve comes last. A shop that weighs more than stiffness puts its score before all that.
 */
public final class Ranking {
  private static final Comparator<Standing> BEST_FIRST =
      Comparator.comparingDouble(Standing::chance)
          .reversed()
          .thenComparingDouble(Standing::missNPerMm)
          .thenComparing(Comparator.comparingDouble(Standing::leastSpareMm).reversed());

  private Ranking() {}

  /** All of the candidates, each of them once. */
  public static List<Standing> of(
      OrderTrial trial, List<Candidate> candidates, RankingWeights weights) {
    return candidates.parallelStream().map(trial::standing).sorted(bestFirst(weights)).toList();
  }

  private static Comparator<Standing> bestFirst(RankingWeights weights) {
    Comparator<Standing> best =
        weights.isStiffnessAlone()
            ? BEST_FIRST
            : Comparator.comparingDouble(weights::scoreOf).reversed().thenComparing(BEST_FIRST);
    return (a, b) -> {
      int byServing = Boolean.compare(b.canServe(), a.canServe());
      if (byServing != 0) {
        return byServing;
      }
      int byMerit = a.canServe() ? best.compare(a, b) : 0;
      return byMerit != 0 ? byMerit : a.tag().compareTo(b.tag());
    };
  }
}
