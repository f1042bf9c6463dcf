package sagwright.choose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.MaximumWeightBipartiteMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import sagwright.choose.Allocation.Pair;
import sagwright.choose.ChanceTable.Chance;

/** Pairs orders with blanks: docs/contract.md, section 7. */
public final class Allocator {
  /**
   * The solver reckons in decimal numbers of any length, and takes very long over long ones: it is
   * given chances in steps of this, none of them 0. That shifts the sum by less than rounding does.
   */
  private static final double STEP = 1e-16;

  private Allocator() {}

  /** The pairing with the greatest sum of chances. */
  public static Allocation greatest(ChanceTable table) {
    Graph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    List<String> orders = table.orders();
    Set<Integer> orderSide = new HashSet<>();
    Set<Integer> blankSide = new HashSet<>();
    Map<String, Integer> blanks = new HashMap<>();
    for (int order = 0; order < orders.size(); order++) {
      graph.addVertex(order);
      orderSide.add(order);
      for (Chance chance : table.of(orders.get(order))) {
        int blank = blanks.computeIfAbsent(chance.tag(), tag -> orders.size() + blanks.size());
        if (blankSide.add(blank)) {
          graph.addVertex(blank);
        }
        graph.setEdgeWeight(graph.addEdge(order, blank), inSteps(chance.chance()));
      }
    }
    Set<DefaultWeightedEdge> matched =
        new MaximumWeightBipartiteMatching<>(graph, orderSide, blankSide).getMatching().getEdges();
    Map<String, Chance> taken = new HashMap<>();
    for (int order = 0; order < orders.size(); order++) {
      for (Chance chance : table.of(orders.get(order))) {
        if (matched.contains(graph.getEdge(order, blanks.get(chance.tag())))) {
          taken.put(orders.get(order), chance);
        }
      }
    }
    return allocation(orders, taken);
  }

  private static double inSteps(double chance) {
    return Math.max(1, Math.rint(chance / STEP)) * STEP;
  }

  /** What comes of it where each order, as it came in, takes the best blank that is left. */
  public static Allocation firstComeFirstServed(ChanceTable table) {
    Map<String, Chance> taken = new HashMap<>();
    Set<String> gone = new HashSet<>();
    for (String order : table.orders()) {
      Optional<Chance> best =
          table.of(order).stream().filter(chance -> !gone.contains(chance.tag())).findFirst();
      best.ifPresent(
          chance -> {
            taken.put(order, chance);
            gone.add(chance.tag());
          });
    }
    return allocation(table.orders(), taken);
  }

  /**
   * What it would mean to promise a blank to an order now.
   *
   * @param promise with the chance of that order with that blank
   */
  public static PromiseCost costOf(ChanceTable table, Pair promise) {
    ChanceTable others = table.withoutOrder(promise.order());
    Allocation withIt = greatest(others);
    boolean isWanted = withIt.pairs().stream().anyMatch(pair -> pair.tag().equals(promise.tag()));
    double with = withIt.sumOfChances();
    double without = isWanted ? greatest(others.withoutBlank(promise.tag())).sumOfChances() : with;
    return new PromiseCost(promise.chance(), with, without);
  }

  private static Allocation allocation(List<String> orders, Map<String, Chance> taken) {
    List<Pair> pairs = new ArrayList<>();
    List<String> without = new ArrayList<>();
    for (String order : orders) {
      Chance chance = taken.get(order);
      if (chance == null) {
        without.add(order);
      } else {
        pairs.add(new Pair(order, chance.tag(), chance.chance()));
      }
    }
    return new Allocation(pairs, without);
  }
}
