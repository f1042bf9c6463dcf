package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HandLearningTest {
  private static final Instant FIRST = Instant.parse("2026-03-02T09:00:00Z");

  /** Guesses that are off by so many percent, of shafts from 2 N/mm on in steps of 0.1. */
  private static HandLearning off(double... percent) {
    List<HandLearning.Felt> felt = new ArrayList<>();
    for (int i = 0; i < percent.length; i++) {
      double answer = 2 + 0.1 * i;
      felt.add(
          new HandLearning.Felt(
              FIRST.plus(Duration.ofDays(i)), "t", answer * (1 + percent[i] / 100), answer));
    }
    return new HandLearning("TH", felt);
  }

  @Test
  void aHandThatHasNotGuessedIsToldSo() {
    assertEquals("No guesses yet.", off().inWords());
    assertTrue(Double.isNaN(off(1, 2).lastWithinPercent()));
  }

  @Test
  void fewGuessesAreSpokenOfTogether() {
    assertEquals("One guess so far, within 8 %.", off(-7.2).inWords());
    assertEquals("All 3 guesses so far were within 12 %.", off(4, -12, 3).inWords());
  }

  @Test
  void oneBadGuessAmongTheLastTenDoesNotSpoilTheWords() {
    HandLearning hand = off(50, 50, 1, -2, 3, -4, 5, -6, 7, -2, 30, 1);
    assertEquals(7, hand.lastWithinPercent());
    assertTrue(hand.inWords().startsWith("Nine of the last ten guesses were within 7 %."));
  }

  @Test
  void aHandThatHasLearntHearsHowItBegan() {
    HandLearning hand =
        off(-21, 18, 25, -19, 40, -15, 12, -9, 22, 17, 3, -4, 2, 5, -3, 4, -5, 1, -2, 3);
    assertTrue(
        hand.inWords()
            .startsWith(
                "Nine of the last ten guesses were within 5 %; of the first ten, nine were within"
                    + " 25 %."),
        hand.inWords());
  }

  @Test
  void aHandThatGoesTowardsTheMiddleHearsSo() {
    double[] off = new double[20];
    for (int i = 0; i < off.length; i++) {
      off[i] = 12 - 1.2 * i + (i % 2 == 0 ? 1 : -1);
    }
    assertTrue(
        off(off).inWords().endsWith("Soft ones are called too stiff, stiff ones too soft."),
        off(off).inWords());
  }

  @Test
  void aHandThatIsStrongHearsThatAllIsTooSoft() {
    HandLearning hand = off(-9, -11, -10, -8, -12, -10, -9, -11, -10, -10, -9, -11);
    assertTrue(hand.inWords().endsWith("On the whole 10 % too soft."), hand.inWords());
  }

  /**
   * By chance alone one hand in forty or so is told of a leaning; seeded, so the same each time.
   */
  @Test
  void aHandWithoutALeaningIsSeldomToldOfOne() {
    Random random = new Random(4);
    int told = 0;
    for (int hand = 0; hand < 400; hand++) {
      double[] off = random.doubles(20, -8, 8).toArray();
      told += off(off).inWords().endsWith("It leans to neither side.") ? 0 : 1;
    }
    assertTrue(told < 40, "told: " + told);
  }
}
