package sagwright.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sagwright.choose.Allocation.Pair;
import sagwright.choose.ChanceTable.Chance;

class AllocatorTest {
  /** Published matrices: src/test/resources/reference/formulas.md, section 11. */
  @Test
  void givesTheGreatestSumsOfPublishedMatrices() {
    assertEquals(18, greatest(new double[][] {{8, 4, 7}, {5, 2, 3}, {9, 4, 8}}), 1e-10);
    assertEquals(11, greatest(new double[][] {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}}), 1e-10);
    assertEquals(
        3315,
        greatest(
            new double[][] {
              {7, 53, 183, 439, 863},
              {497, 383, 563, 79, 973},
              {287, 63, 343, 169, 583},
              {627, 343, 773, 959, 943},
              {767, 473, 103, 699, 303}
            }),
        1e-10);
  }

  /** The same matrices turned round: a least sum is what the greatest of 1000 − x leaves. */
  @Test
  void givesTheLeastSumsOfPublishedMatrices() {
    assertEquals(15, least(new double[][] {{8, 4, 7}, {5, 2, 3}, {9, 4, 8}}), 1e-10);
    assertEquals(12, least(new double[][] {{5, 9, 1}, {10, 3, 2}, {8, 7, 4}}), 1e-10);
    assertEquals(5, least(new double[][] {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}}), 1e-10);
  }

  @Test
  void findsTheOnlyBestPairingOfEulersSmallMatrix() {
    Allocation allocation =
        Allocator.greatest(
            table(
                new double[][] {
                  {.007, .053, .183, .439, .863},
                  {.497, .383, .563, .079, .973},
                  {.287, .063, .343, .169, .583},
                  {.627, .343, .773, .959, .943},
                  {.767, .473, .103, .699, .303}
                }));
    assertEquals(
        List.of("25-004", "25-001", "25-002", "25-003", "25-000"),
        allocation.pairs().stream().map(Pair::tag).toList());
    assertEquals(3.315, allocation.sumOfChances(), 1e-14);
  }

  @Test
  void isAsGoodAsASecondSolverOnTwoThousandSmallCases() {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double[][] chances = someChances(random, 1 + random.nextInt(7), 1 + random.nextInt(9));
      Allocation allocation = Allocator.greatest(table(chances));
      assertEquals(
          ShortestAugmentingPath.greatestSum(chances),
          allocation.sumOfChances(),
          1e-13,
          "case " + i);
      requireSound(allocation, chances);
    }
  }

  @Test
  void isAsGoodAsTryingEveryPairing() {
    Random random = new Random(8);
    for (int i = 0; i < 300; i++) {
      double[][] chances = someChances(random, 1 + random.nextInt(5), 1 + random.nextInt(5));
      assertEquals(
          byTryingAll(chances, 0, new HashSet<>()),
          Allocator.greatest(table(chances)).sumOfChances(),
          1e-13,
          "case " + i);
    }
  }

  @Test
  void isAsGoodAsTheSecondSolverWhereAllOrdersAskForTheSame() {
    double[] one = new Random(9).doubles(120).toArray();
    double[][] chances = IntStream.range(0, 30).mapToObj(i -> one).toArray(double[][]::new);
    assertEquals(
        ShortestAugmentingPath.greatestSum(chances),
        Allocator.greatest(table(chances)).sumOfChances(),
        1e-12);
  }

  @Test
  void pairsEvenTheFaintestChanceAndNeverAChanceOfNone() {
    Allocation allocation = Allocator.greatest(table(new double[][] {{1e-200, 0}, {0, 0}}));
    assertEquals(List.of(new Pair("R-000", "25-000", 1e-200)), allocation.pairs());
    assertEquals(List.of("R-001"), allocation.without());
    assertEquals(1e-200, allocation.sumOfChances());
  }

  @Test
  void givesNothingWhereThereIsNothing() {
    Allocation none = Allocator.greatest(ChanceTable.ofChances(Map.of()));
    assertEquals(new Allocation(List.of(), List.of()), none);
    Allocation noBlanks = Allocator.greatest(table(new double[][] {{}, {}}));
    assertEquals(List.of("R-000", "R-001"), noBlanks.without());
  }

  @Test
  void firstComeTakesTheBestBlankThatOthersNeedMore() {
    double[][] chances = {{0.99, 0.98}, {0.95, 0.02}};
    Allocation first = Allocator.firstComeFirstServed(table(chances));
    assertEquals(
        List.of(new Pair("R-000", "25-000", 0.99), new Pair("R-001", "25-001", 0.02)),
        first.pairs());
    Allocation greatest = Allocator.greatest(table(chances));
    assertEquals(
        List.of(new Pair("R-000", "25-001", 0.98), new Pair("R-001", "25-000", 0.95)),
        greatest.pairs());
  }

  @Test
  void aPromiseCostsTheOthersWhatTheyLoseByTheBlank() {
    ChanceTable table = table(new double[][] {{0.99, 0.98, 0}, {0.95, 0.02, 0.01}});
    PromiseCost dear = Allocator.costOf(table, new Pair("R-000", "25-000", 0.99));
    assertEquals(0.95 - 0.02, dear.toOthers(), 1e-15);
    PromiseCost cheap = Allocator.costOf(table, new Pair("R-000", "25-001", 0.98));
    assertEquals(0, cheap.toOthers());
  }

  @Test
  void aPromisesCostIsThatOfSolvingTheRestAnew() {
    Random random = new Random(10);
    for (int i = 0; i < 200; i++) {
      double[][] chances = someChances(random, 2 + random.nextInt(5), 2 + random.nextInt(6));
      int order = random.nextInt(chances.length);
      int blank = random.nextInt(chances[0].length);
      double[][] others =
          IntStream.range(0, chances.length)
              .filter(row -> row != order)
              .mapToObj(row -> chances[row].clone())
              .toArray(double[][]::new);
      double with = ShortestAugmentingPath.greatestSum(others);
      Arrays.stream(others).forEach(row -> row[blank] = 0);
      double without = ShortestAugmentingPath.greatestSum(others);
      PromiseCost cost =
          Allocator.costOf(
              table(chances), new Pair(number(order), tag(blank), chances[order][blank]));
      assertEquals(with - without, cost.toOthers(), 1e-13, "case " + i);
    }
  }

  /** Of any size, as shares of 1000. */
  private static double greatest(double[][] gains) {
    return 1000 * Allocator.greatest(table(scaled(gains, 0, 1e-3))).sumOfChances();
  }

  private static double least(double[][] costs) {
    double most = Allocator.greatest(table(scaled(costs, 1, -1e-3))).sumOfChances();
    return 1000 * (costs.length - most);
  }

  private static double[][] scaled(double[][] matrix, double plus, double times) {
    return Arrays.stream(matrix)
        .map(row -> Arrays.stream(row).map(x -> plus + times * x).toArray())
        .toArray(double[][]::new);
  }

  /** A third of them 0, some equal, some very small. */
  private static double[][] someChances(Random random, int orders, int blanks) {
    double[][] chances = new double[orders][blanks];
    for (double[] row : chances) {
      for (int j = 0; j < blanks; j++) {
        double of = random.nextDouble();
        row[j] =
            switch (random.nextInt(6)) {
              case 0, 1 -> 0;
              case 2 -> Math.rint(4 * of) / 4;
              case 3 -> of * 1e-12;
              default -> of;
            };
      }
    }
    return chances;
  }

  private static double byTryingAll(double[][] chances, int order, Set<Integer> gone) {
    if (order == chances.length) {
      return 0;
    }
    double best = byTryingAll(chances, order + 1, gone);
    for (int blank = 0; blank < chances[order].length; blank++) {
      if (gone.add(blank)) {
        best = Math.max(best, chances[order][blank] + byTryingAll(chances, order + 1, gone));
        gone.remove(blank);
      }
    }
    return best;
  }

  private static void requireSound(Allocation allocation, double[][] chances) {
    Set<String> seen = new HashSet<>();
    for (Pair pair : allocation.pairs()) {
      assertTrue(seen.add(pair.order()) && seen.add(pair.tag()), pair.toString());
      int order = Integer.parseInt(pair.order().substring(2));
      int blank = Integer.parseInt(pair.tag().substring(3));
      assertTrue(pair.chance() > 0 && pair.chance() == chances[order][blank], pair.toString());
    }
    allocation.without().forEach(order -> assertTrue(seen.add(order)));
    assertEquals(chances.length, allocation.pairs().size() + allocation.without().size());
  }

  private static ChanceTable table(double[][] chances) {
    Map<String, List<Chance>> byOrder = new LinkedHashMap<>();
    for (int i = 0; i < chances.length; i++) {
      List<Chance> all = new ArrayList<>();
      for (int j = 0; j < chances[i].length; j++) {
        all.add(new Chance(tag(j), chances[i][j]));
      }
      byOrder.put(number(i), all);
    }
    return ChanceTable.ofChances(byOrder);
  }

  private static String number(int order) {
    return String.format("R-%03d", order);
  }

  private static String tag(int blank) {
    return String.format("25-%03d", blank);
  }
}
