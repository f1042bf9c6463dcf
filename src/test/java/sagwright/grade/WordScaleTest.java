package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordScaleTest {
  private static final WordScale SCALE = WordScale.AT_FIRST;

  @ParameterizedTest
  @CsvSource({"1, supple", "1.94, supple", "1.95, easy", "2.3, middling", "2.7, stout", "9, stout"})
  void everyStiffnessHasItsWord(double stiffness, String word) {
    assertEquals(word, SCALE.wordFor(stiffness));
  }

  @Test
  void aWordStandsForItsRange() {
    Ask ask = SCALE.askFor("firm");
    assertEquals(2.45, ask.lowestNPerMm(), 1e-12);
    assertEquals(2.7, ask.highestNPerMm(), 1e-12);
    assertEquals(SCALE.usual(), ask.setUp());
    assertThrows(IllegalArgumentException.class, () -> SCALE.askFor("floppy"));
  }

  @Test
  void theShopRenamesItsWords() {
    WordScale renamed = SCALE.withWords(List.of("supple", "easy", "middling", "brisk", "stout"));
    assertEquals("brisk", renamed.wordFor(2.5));
    assertThrows(
        IllegalArgumentException.class,
        () -> SCALE.withWords(List.of("supple", "easy", "middling", "easy", "stout")));
  }

  @Test
  void bordersRise() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new WordScale(SCALE.usual(), List.of("soft", "hard"), List.of(1.0, 3.0, 2.0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new WordScale(SCALE.usual(), List.of("soft"), List.of(1.0)));
  }
}
