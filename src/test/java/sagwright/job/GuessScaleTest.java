package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.beam.SetUp;
import sagwright.grade.WordScale;

class GuessScaleTest {
  private static final WordScale WORDS =
      new WordScale(
          new SetUp(100, 1100, 600, 600, 0),
          java.util.List.of("soft", "so so", "firm", "firmer"),
          java.util.List.of(1.5, 2.0, 2.2, 2.4, 3.0));

  @ParameterizedTest
  @CsvSource({"soft, 1.75", "SOFT, 1.75", "sof, 1.75", "so s, 2.1", "firm, 2.3", "firme, 2.7"})
  void aWordOrItsBeginningIsTheMiddleOfItsRange(String typed, double nPerMm) {
    assertEquals(nPerMm, new GuessScale(WORDS, 1).nPerMm(typed).orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "so", "fir", "stout", "2.1"})
  void whatIsNoWordOrSeveralIsNotGuessedAt(String typed) {
    assertTrue(new GuessScale(WORDS, 1).nPerMm(typed).isEmpty());
  }

  @Test
  void aWordIsBroughtBackToTheShaftAsItLies() {
    assertEquals(3.45, new GuessScale(WORDS, 1.5).nPerMm("firm").orElseThrow(), 1e-12);
  }
}
