package sagwright.choose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Puts blanks in order, best first: docs/contract.md, section 7. By the chance that all that is
 * asked lies within its tolerance, then by nearness to the ask, then by spare, then by tag; what
 * cannot serve comes last. A shop that weighs more than stiffness puts its score before all that.
 */
public final class Ranking {
  private static final Comparator<Place<?>> BEST_FIRST =
      (a, b) -> {
        int order = Boolean.compare(b.canServe, a.canServe);
        order = order != 0 ? order : Double.compare(b.score, a.score);
        order = order != 0 ? order : Double.compare(b.chance, a.chance);
        order = order != 0 ? order : Double.compare(a.missNPerMm, b.missNPerMm);
        order = order != 0 ? order : Double.compare(b.spareMm, a.spareMm);
        return order != 0 ? order : a.tag.compareTo(b.tag);
      };

  private Ranking() {}

  /** All of the candidates, each of them once. */
  public static List<Standing> of(
      OrderTrial trial, List<Candidate> candidates, RankingWeights weights) {
    List<Standing> standings = candidates.parallelStream().map(trial::standing).toList();
    return of(standings, standing -> standing, weights);
  }

  /**
   * The same of what has been held against the order before.
   *
   * @param standing how each stands
   */
  public static <T> List<T> of(
      List<T> held, Function<? super T, Standing> standing, RankingWeights weights) {
    List<Place<T>> places = new ArrayList<>(held.size());
    for (T each : held) {
      places.add(Place.of(each, standing.apply(each), weights));
    }
    places.sort(BEST_FIRST);
    List<T> ranked = new ArrayList<>(places.size());
    for (Place<T> place : places) {
      ranked.add(place.held);
    }
    return Collections.unmodifiableList(ranked);
  }

  /**
   * What decides a blank's place, worked out once: thousands of them are compared a dozen times
   * each.
   *
   * @param score 0 with stiffness alone, where the chance itself ranks
   */
  private record Place<T>(
      T held,
      String tag,
      boolean canServe,
      double score,
      double chance,
      double missNPerMm,
      double spareMm) {
    /** Of blanks that cannot serve the tag alone decides. */
    static <T> Place<T> of(T held, Standing standing, RankingWeights weights) {
      return standing.canServe()
          ? new Place<>(
              held,
              standing.tag(),
              true,
              weights.isStiffnessAlone() ? 0 : weights.scoreOf(standing),
              standing.chance(),
              standing.missNPerMm(),
              standing.leastSpareMm())
          : new Place<>(held, standing.tag(), false, 0, 0, 0, 0);
    }
  }
}
