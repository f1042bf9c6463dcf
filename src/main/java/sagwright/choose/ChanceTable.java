package sagwright.choose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * The chances with which blanks serve orders, cut down to what a pairing can need: of n orders each
 * keeps its n best blanks, since the others can take n − 1 of them at the most. A chance of 0 is
 * left out.
 */
public final class ChanceTable {
  /** A blank that an order may take. */
  public record Chance(String tag, double chance) {}

  private static final Comparator<Chance> BEST_FIRST =
      Comparator.comparingDouble(Chance::chance).reversed().thenComparing(Chance::tag);

  private final Map<String, List<Chance>> byOrder;

  private ChanceTable(Map<String, List<Chance>> byOrder) {
    this.byOrder = byOrder;
  }

  /**
   * An order and the blanks of its species.
   *
   * @param number of the order
   */
  public record Contest(String number, OrderTrial trial, List<Candidate> candidates) {
    public Contest {
      candidates = List.copyOf(candidates);
    }
  }

  /**
   * @param contests in the order in which the orders came in, no number twice
   */
  public static ChanceTable of(List<Contest> contests) {
    int most = contests.size();
    List<List<Chance>> best =
        contests.parallelStream().map(contest -> bestOf(contest, most)).toList();
    Map<String, List<Chance>> byOrder = new LinkedHashMap<>();
    for (int i = 0; i < most; i++) {
      byOrder.put(contests.get(i).number(), best.get(i));
    }
    return new ChanceTable(byOrder);
  }

  /**
   * From chances that are known already.
   *
   * @param chances for each order, in the order in which they came in, those of its blanks
   */
  public static ChanceTable ofChances(Map<String, List<Chance>> chances) {
    Map<String, List<Chance>> byOrder = new LinkedHashMap<>();
    chances.forEach(
        (number, all) ->
            byOrder.put(
                number,
                all.stream()
                    .filter(chance -> chance.chance() > 0)
                    .sorted(BEST_FIRST)
                    .limit(chances.size())
                    .toList()));
    return new ChanceTable(byOrder);
  }

  /**
   * Blanks are looked at closely in falling order of the most that their chance can be, until
   * enough are known that no other can beat.
   */
  private static List<Chance> bestOf(Contest contest, int most) {
    List<Chance> bounds = new ArrayList<>();
    Map<String, Candidate> byTag = new LinkedHashMap<>();
    for (Candidate candidate : contest.candidates()) {
      double bound = contest.trial().mostChance(candidate);
      if (bound > 0) {
        bounds.add(new Chance(candidate.tag(), bound));
        byTag.put(candidate.tag(), candidate);
      }
    }
    bounds.sort(BEST_FIRST);
    PriorityQueue<Chance> best = new PriorityQueue<>(BEST_FIRST.reversed());
    for (Chance bound : bounds) {
      if (best.size() == most && bound.chance() <= best.element().chance()) {
        break;
      }
      double chance = contest.trial().chance(byTag.get(bound.tag()));
      if (chance > 0) {
        best.add(new Chance(bound.tag(), chance));
      }
      if (best.size() > most) {
        best.remove();
      }
    }
    return best.stream().sorted(BEST_FIRST).toList();
  }

  /** The orders' numbers, in the order in which they came in. */
  public List<String> orders() {
    return List.copyOf(byOrder.keySet());
  }

  /** An order's best blanks, best first. */
  public List<Chance> of(String order) {
    return byOrder.get(order);
  }

  /** The same without one order. */
  ChanceTable withoutOrder(String order) {
    Map<String, List<Chance>> others = new LinkedHashMap<>(byOrder);
    others.remove(order);
    return new ChanceTable(others);
  }

  /** The same without one blank. */
  ChanceTable withoutBlank(String tag) {
    Map<String, List<Chance>> others = new LinkedHashMap<>();
    byOrder.forEach(
        (order, best) ->
            others.put(order, best.stream().filter(c -> !c.tag().equals(tag)).toList()));
    return new ChanceTable(others);
  }
}
