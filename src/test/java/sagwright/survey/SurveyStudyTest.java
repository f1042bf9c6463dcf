package sagwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sagwright.beam.SetUp;
import sagwright.run.PoorRunException;
import sagwright.uncertainty.Estimate;

/**
 * Seeded Monte Carlo of the whole survey: errors drawn as the sheets state them, hand-read runs
 * evaluated, models fitted, one proposed. What is counted: shafts mistaken for what they are not,
 * and how often the stated 95 % hold.
 */
class SurveyStudyTest {
  private static final int ORDINARY = 60;
  private static final int LONG = 1500;

  private record Study(Map<ModelKind, Integer> proposed, int standingOut, List<Held> held) {}

  /** How often the truth lay within the stated 95 %, at one place. */
  private static final class Held {
    private final double xMm;
    private int held;

    Held(double xMm) {
      this.xMm = xMm;
    }
  }

  private static Study study(
      int shafts, LongFunction<InventedShaft> invented, LongFunction<List<SetUp>> setUps)
      throws PoorRunException {
    Map<ModelKind, Integer> proposed = new EnumMap<>(ModelKind.class);
    List<Held> held = List.of(new Held(248), new Held(745), new Held(1242));
    int standingOut = 0;
    for (int i = 0; i < shafts; i++) {
      InventedShaft shaft = invented.apply(1000 + i);
      SurveyAnswer answer = shaft.survey(setUps.apply(i));
      proposed.merge(answer.proposed().kind(), 1, Integer::sum);
      standingOut += answer.runsStandingOut().size();
      for (Held h : held) {
        Estimate e = answer.proposed().modulusAt(h.xMm);
        double truth = shaft.modulusMPa.applyAsDouble(h.xMm);
        h.held += Math.abs(e.value() - truth) <= e.halfWidth95() ? 1 : 0;
      }
    }
    return new Study(proposed, standingOut, held);
  }

  private static int count(Study study, ModelKind kind) {
    return study.proposed().getOrDefault(kind, 0);
  }

  private static List<SetUp> randomSetUps(long seed, int count) {
    SplittableRandom random = new SplittableRandom(seed);
    List<SetUp> setUps = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double span = 400 + 800 * random.nextDouble();
      double a = 20 + (InventedShaft.LENGTH_MM - 40 - span) * random.nextDouble();
      double at = a + span * (0.4 + 0.2 * random.nextDouble());
      setUps.add(new SetUp(a, a + span, at, at, 0));
    }
    return setUps;
  }

  @Test
  void evenShaftsAreTakenForEvenOnes() throws PoorRunException {
    Study even = study(ORDINARY, InventedShaft::new, i -> InventedShaft.EIGHT);
    assertTrue(count(even, ModelKind.ONE) >= 0.95 * ORDINARY, even.proposed().toString());
    Study anywhere = study(ORDINARY, InventedShaft::new, i -> randomSetUps(i, 8));
    assertTrue(count(anywhere, ModelKind.ONE) >= 0.92 * ORDINARY, anywhere.proposed().toString());
    assertEquals(0, even.standingOut());
  }

  @ParameterizedTest
  @CsvSource({"0, 0.15", "1, 0.15", "2, 0.15", "0, 0.20", "1, 0.20", "2, 0.20"})
  void softThirdsAreFound(int third, double share) throws PoorRunException {
    Study soft =
        study(
            ORDINARY / 3,
            seed -> new InventedShaft(seed).softThird(third, share),
            i -> InventedShaft.EIGHT);
    assertTrue(count(soft, ModelKind.PIECES) >= 0.95 * ORDINARY / 3, soft.proposed().toString());
  }

  @ParameterizedTest
  @CsvSource({"0.10", "0.20", "-0.10", "-0.20"})
  void straightGradientsAreFound(double share) throws PoorRunException {
    Study straight =
        study(
            ORDINARY / 3, seed -> new InventedShaft(seed).rising(share), i -> InventedShaft.EIGHT);
    assertTrue(
        count(straight, ModelKind.STRAIGHT) >= 0.95 * ORDINARY / 3, straight.proposed().toString());
  }

  @Test
  @Tag("long")
  void overManyShaftsFewEvenOnesAreMistakenAndTheStated95PercentHold() throws PoorRunException {
    Study even = study(LONG, InventedShaft::new, i -> InventedShaft.EIGHT);
    assertTrue(count(even, ModelKind.ONE) >= 0.97 * LONG, even.proposed().toString());
    assertHolds(even, LONG);
    Study few =
        study(
            LONG,
            seed -> {
              InventedShaft shaft = new InventedShaft(seed);
              shaft.stations = 2;
              return shaft;
            },
            i -> InventedShaft.EIGHT);
    assertTrue(count(few, ModelKind.ONE) >= 0.97 * LONG, few.proposed().toString());
    assertHolds(few, LONG);
    assertHolds(
        study(LONG, seed -> new InventedShaft(seed).rising(0.15), i -> InventedShaft.EIGHT), LONG);
    assertHolds(
        study(LONG, seed -> new InventedShaft(seed).softThird(0, 0.2), i -> InventedShaft.EIGHT),
        LONG);
  }

  private static void assertHolds(Study study, int shafts) {
    for (Held h : study.held()) {
      double share = (double) h.held / shafts;
      assertTrue(share >= 0.93 && share <= 0.97, "at " + h.xMm + " mm " + share);
    }
  }

  @ParameterizedTest
  @Tag("long")
  @CsvSource({"4, 0.97", "6, 0.97", "12, 0.95", "20, 0.94"})
  void howeverManyRunsFewEvenShaftsAreMistaken(int runs, double least) throws PoorRunException {
    Study even = study(LONG / 3, InventedShaft::new, i -> randomSetUps(i, runs));
    assertTrue(count(even, ModelKind.ONE) >= least * LONG / 3, even.proposed().toString());
  }
}
