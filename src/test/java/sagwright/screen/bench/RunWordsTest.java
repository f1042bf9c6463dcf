package sagwright.screen.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunWordsTest {
  @ParameterizedTest
  @CsvSource({
    "1, run 1",
    "1 2, runs 1 and 2",
    "1 2 3, runs 1 to 3",
    "1 3 4, 'runs 1, 3 and 4'",
    "1 2 3 4 6 7 8, runs 1 to 4 and 6 to 8",
    "2 4 5 6 9, 'runs 2, 4 to 6 and 9'",
    "1 3 5 7 9 11, 6 runs"
  })
  void runsAreNamedAsShortAsTheyCanBe(String numbers, String words) {
    List<Integer> each = Arrays.stream(numbers.split(" ")).map(Integer::valueOf).toList();
    assertEquals(words, RunWords.inWords(each));
  }
}
