package sagwright.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sagwright.choose.Blanks.ask;
import static sagwright.choose.Blanks.askWithMass;
import static sagwright.choose.Blanks.order;
import static sagwright.choose.Blanks.wood;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sagwright.finish.BlankWood;
import sagwright.grade.Ask;
import sagwright.grade.GradedForecast;
import sagwright.grade.Grader;
import sagwright.grade.Order;
import sagwright.grade.Sureness;

class RankingTest {
  /** What PLAN cut from wood of 12 GPa shows at SET_UP; proportional to the modulus. */
  private static final double STIFFNESS_OF_12_GPA =
      new OrderTrial(order(ask(1, 5)), Sureness.USUAL)
          .standing(new Candidate("x", wood(12000, 0)))
          .graded()
          .grade()
          .stiffnessNPerMm()
          .value();

  @Test
  void theGreaterChanceComesFirst() {
    assertEquals(
        List.of("25-002", "25-003", "25-001"),
        tags(
            ask(STIFFNESS_OF_12_GPA, 2),
            new Candidate("25-001", wood(12400, 100)),
            new Candidate("25-002", wood(12010, 100)),
            new Candidate("25-003", wood(11900, 100))));
  }

  @Test
  void ofEqualChancesTheNearerToTheAskComesFirst() {
    assertEquals(
        List.of("25-002", "25-001", "25-004", "25-003"),
        tags(
            ask(STIFFNESS_OF_12_GPA, 5),
            new Candidate("25-001", wood(12400, 0)),
            new Candidate("25-002", wood(11900, 0)),
            new Candidate("25-003", wood(14000, 0)),
            new Candidate("25-004", wood(11000, 0))));
  }

  @Test
  void ofEquallyNearTheRoomierComesFirstAndThenTheTag() {
    assertEquals(
        List.of("25-003", "25-001", "25-002"),
        tags(
            ask(STIFFNESS_OF_12_GPA, 5),
            new Candidate("25-002", wood(11900, 50, 30, 405)),
            new Candidate("25-001", wood(11900, 50, 30, 405)),
            new Candidate("25-003", wood(11900, 50, 30.5, 405))));
  }

  @Test
  void whatCannotServeComesLastWithItsReason() {
    List<Standing> ranked =
        ranked(
            order(ask(STIFFNESS_OF_12_GPA, 5)),
            Candidate.untested("25-001"),
            new Candidate("25-003", wood(12000, 50, 28, 405)),
            new Candidate("25-004", Blanks.shortWood(1400)),
            new Candidate("25-002", wood(20000, 50)));
    assertEquals(
        List.of("25-002", "25-001", "25-003", "25-004"),
        ranked.stream().map(Standing::tag).toList());
    assertTrue(ranked.get(0).canServe(), "far too stiff, but that is no reason");
    assertEquals("no run that gave an answer", ranked.get(1).obstacle().inWords());
    assertNull(ranked.get(1).graded());
    assertEquals(
        "does not fit: 1.09 mm short of the finished round at 1473 mm",
        ranked.get(2).obstacle().inWords());
    assertEquals(0, ranked.get(2).chance());
    assertEquals(
        "does not fit: sticks out of the blank by 81.00 mm", ranked.get(3).obstacle().inWords());
  }

  @Test
  void whatIsAskedBesideCounts() {
    BlankWood twelve = wood(12000, 100);
    GradedForecast graded =
        new OrderTrial(order(ask(1, 5), Ask.ofStiffness(Blanks.BUTT_SET_UP, 1, 5)), Sureness.USUAL)
            .standing(new Candidate("x", twelve))
            .graded();
    double atButt = graded.alsoAsked().get(0).stiffnessNPerMm().value();
    Order both =
        order(
            ask(STIFFNESS_OF_12_GPA, 3),
            Ask.ofStiffness(Blanks.BUTT_SET_UP, atButt * 12300 / 12000, 1));
    List<Standing> ranked =
        ranked(both, new Candidate("25-001", twelve), new Candidate("25-002", wood(12250, 100)));
    assertEquals("25-002", ranked.get(0).tag());
    assertTrue(
        ranked.get(0).graded().grade().chanceWithinTolerance()
            < ranked.get(1).graded().grade().chanceWithinTolerance(),
        "by the first ask alone it would be the other");
  }

  @Test
  void standsAsTheGraderHasItButForTheFrequency() {
    Order order = order(askWithMass(STIFFNESS_OF_12_GPA, 5, 400));
    BlankWood wood = wood(12340, 55);
    GradedForecast whole = new Grader(Sureness.USUAL).grade(wood, order);
    GradedForecast got =
        new OrderTrial(order, Sureness.USUAL).standing(new Candidate("25-001", wood)).graded();
    assertEquals(whole.grade(), got.grade());
    assertEquals(whole.chanceOfAll(), got.chanceOfAll());
    assertEquals(whole.warnings(), got.warnings());
    assertEquals(whole.forecast().cut(), got.forecast().cut());
    assertEquals(whole.forecast().massG(), got.forecast().massG());
    assertEquals(whole.forecast().balanceFromButtMm(), got.forecast().balanceFromButtMm());
    assertNull(got.forecast().firstBendingHz());
  }

  @Test
  void theOrderDoesNotHangOnTheOrderOfTheCandidates() {
    Random random = new Random(3);
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      candidates.add(Blanks.someCandidate(String.format("25-%03d", i), random));
    }
    OrderTrial trial = new OrderTrial(order(ask(STIFFNESS_OF_12_GPA, 4)), Sureness.USUAL);
    List<Standing> ranked = Ranking.of(trial, candidates, RankingWeights.STIFFNESS_FIRST);
    Collections.shuffle(candidates, random);
    List<Standing> again = Ranking.of(trial, candidates, RankingWeights.STIFFNESS_FIRST);
    assertEquals(
        ranked.stream().map(Standing::tag).toList(), again.stream().map(Standing::tag).toList());
    for (int i = 1; i < ranked.size(); i++) {
      assertTrue(ranked.get(i - 1).chance() >= ranked.get(i).chance());
      assertTrue(ranked.get(i - 1).canServe() || !ranked.get(i).canServe());
    }
  }

  @Test
  void aShopThatWeighsMassPutsTheBetterMassFirst() {
    Order order = order(askWithMass(STIFFNESS_OF_12_GPA, 5, 300));
    OrderTrial trial = new OrderTrial(order, Sureness.USUAL);
    List<Candidate> candidates =
        List.of(
            new Candidate("25-001", wood(12000, 20, 31, 405)),
            new Candidate("25-002", wood(12100, 20, 31, 370)));
    double first = trial.standing(candidates.get(0)).graded().forecast().massG();
    double second = trial.standing(candidates.get(1)).graded().forecast().massG();
    assertTrue(Math.abs(second - 300) < Math.abs(first - 300), first + " against " + second);
    assertEquals(
        "25-001", Ranking.of(trial, candidates, RankingWeights.STIFFNESS_FIRST).get(0).tag());
    assertEquals(
        "25-002", Ranking.of(trial, candidates, new RankingWeights(0.7, 0.3, 0, 0)).get(0).tag());
    assertEquals(
        "25-001",
        Ranking.of(trial, candidates, new RankingWeights(0.7, 0, 0.3, 0)).get(0).tag(),
        "no balance is asked: its weight takes no part");
  }

  @Test
  void aShopThatWeighsSpareAlonePutsTheRoomiestFirst() {
    OrderTrial trial = new OrderTrial(order(ask(STIFFNESS_OF_12_GPA, 5)), Sureness.USUAL);
    List<Candidate> candidates =
        List.of(
            new Candidate("25-001", wood(12000, 20, 30, 405)),
            new Candidate("25-002", wood(14000, 20, 31, 405)),
            new Candidate("25-003", wood(12000, 20, 28, 405)));
    assertEquals(
        List.of("25-002", "25-001", "25-003"),
        Ranking.of(trial, candidates, new RankingWeights(0, 0, 0, 1)).stream()
            .map(Standing::tag)
            .toList());
  }

  @Test
  void saysWhatRanks() {
    assertEquals(
        "the chance of the stiffness, then nearness to the ask, then spare",
        RankingWeights.STIFFNESS_FIRST.inWords());
    assertEquals(
        "stiffness 70 %, weight 20 %, spare 10 %", new RankingWeights(7, 2, 0, 1).inWords());
    assertThrows(IllegalArgumentException.class, () -> new RankingWeights(0, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new RankingWeights(1, -1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new RankingWeights(Double.NaN, 1, 0, 0));
  }

  @Test
  void takesBlanksOfTheSpeciesThatTheOrderNames() {
    OrderTrial any = new OrderTrial(order(ask(2, 5)), Sureness.USUAL);
    assertTrue(any.takes("European ash"));
    assertTrue(any.takes(null));
    Order ofAsh = new Order("R-1", "European ash", null, null, Blanks.PLAN, ask(2, 5), List.of());
    OrderTrial ash = new OrderTrial(ofAsh, Sureness.USUAL);
    assertTrue(ash.takes("european ASH"));
    assertFalse(ash.takes("Sugar maple"));
    assertFalse(ash.takes(null));
  }

  private static List<String> tags(Ask ask, Candidate... candidates) {
    return ranked(order(ask), candidates).stream().map(Standing::tag).toList();
  }

  private static List<Standing> ranked(Order order, Candidate... candidates) {
    return Ranking.of(
        new OrderTrial(order, Sureness.USUAL), List.of(candidates), RankingWeights.STIFFNESS_FIRST);
  }
}
