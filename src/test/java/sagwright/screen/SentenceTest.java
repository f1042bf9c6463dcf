package sagwright.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {
  @ParameterizedTest
  @CsvSource(
      value = {
        "the run is short|The run is short.",
        "Is this the right blank?|Is this the right blank?",
        "measure next:|Measure next:",
        "ölig|Ölig.",
        "''|''"
      },
      delimiter = '|')
  void wordsBeginLargeAndEndWithOneStop(String words, String sentence) {
    assertEquals(sentence, Sentence.of(words));
  }
}
