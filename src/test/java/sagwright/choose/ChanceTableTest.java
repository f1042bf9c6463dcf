package sagwright.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sagwright.choose.ChanceTable.Chance;
import sagwright.choose.ChanceTable.Contest;
import sagwright.finish.BlankWood;
import sagwright.grade.Ask;
import sagwright.grade.Sureness;
import sagwright.modulus.ModulusAlong;

class ChanceTableTest {
  private final Random random = new Random(5);
  private final List<Candidate> candidates = candidates();

  @Test
  void theCutLosesNothingOfTheGreatestSum() {
    List<Contest> contests = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      contests.add(contest("R-" + i, i % 3 == 0));
    }
    double[][] all = contests.stream().map(this::chances).toArray(double[][]::new);
    ChanceTable table = ChanceTable.of(contests);
    assertEquals(
        ShortestAugmentingPath.greatestSum(all), Allocator.greatest(table).sumOfChances(), 1e-12);
    for (int i = 0; i < contests.size(); i++) {
      List<Chance> kept = table.of("R-" + i);
      double[] best = Arrays.stream(all[i]).sorted().toArray();
      for (int k = 0; k < kept.size(); k++) {
        assertEquals(best[best.length - 1 - k], kept.get(k).chance(), "the best, best first");
      }
      assertTrue(kept.size() == 9 || best[best.length - 1 - kept.size()] == 0);
    }
  }

  @Test
  void anOrderThatNoBlankFitsKeepsNone() {
    Contest none =
        new Contest(
            "R-1",
            new OrderTrial(Blanks.order(Blanks.ask(2.1, 5)), Sureness.USUAL),
            List.of(
                new Candidate("25-001", Blanks.wood(12000, 60, 27, 400)),
                Candidate.untested("25-002")));
    assertEquals(List.of(), ChanceTable.of(List.of(none)).of("R-1"));
  }

  /** An order of this rack's kind; every third asks for the butt as well. */
  private Contest contest(String number, boolean asksBeside) {
    Ask ask = Blanks.ask(1.9 + 0.4 * random.nextDouble(), 2 + 3 * random.nextDouble());
    Ask beside = Ask.ofStiffness(Blanks.BUTT_SET_UP, 19 + 3 * random.nextDouble(), 6);
    return new Contest(
        number,
        new OrderTrial(asksBeside ? Blanks.order(ask, beside) : Blanks.order(ask), Sureness.USUAL),
        candidates);
  }

  private double[] chances(Contest contest) {
    return candidates.stream().mapToDouble(c -> contest.trial().standing(c).chance()).toArray();
  }

  /** One in eight is of two woods' moduli. */
  private List<Candidate> candidates() {
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      Candidate plain = Blanks.someCandidate(String.format("25-%03d", i), random);
      all.add(i % 8 == 0 && plain.isTested() ? varying(plain) : plain);
    }
    return all;
  }

  private static Candidate varying(Candidate plain) {
    BlankWood wood = plain.wood();
    double modulus = wood.modulusMPa().at(0);
    return new Candidate(
        plain.tag(),
        BlankWood.ofOneWood(
            wood.taper(),
            wood.massG(),
            ModulusAlong.straight(
                new double[] {0, wood.taper().lengthMm()},
                new double[] {modulus * 0.97, modulus * 1.03},
                new double[][] {{6400, 0}, {0, 6400}}),
            wood.modulusToShearRatio()));
  }
}
