package sagwright.grade;

import java.util.List;
import java.util.stream.IntStream;
import sagwright.beam.SetUp;

/**
 * The shop's own words from soft to stiff, each a range of stiffness at the shop's usual set-up on
 * the finished shaft. What is softer than the first range bears the first word, what is stiffer
 * than the last the last one.
 *
 * @param usual the shop's usual set-up
 * @param words from soft to stiff, no two alike
 * @param bordersNPerMm rising and above 0, one more than there are words
 */
public record WordScale(SetUp usual, List<String> words, List<Double> bordersNPerMm) {
  /**
   * What a shop starts with and changes: five words about the stiffness of a finished ash shaft of
   * common size. Common practice, no source.
   */
  public static final WordScale AT_FIRST =
      new WordScale(
          new SetUp(100, 1100, 600, 600, 0),
          List.of("supple", "easy", "middling", "firm", "stout"),
          List.of(1.7, 1.95, 2.2, 2.45, 2.7, 2.95));

  public WordScale {
    words = List.copyOf(words);
    bordersNPerMm = List.copyOf(bordersNPerMm);
    List<Double> borders = bordersNPerMm;
    boolean rising =
        IntStream.range(1, borders.size()).allMatch(i -> borders.get(i) > borders.get(i - 1));
    boolean named = words.stream().noneMatch(String::isBlank);
    if (words.isEmpty()
        || !named
        || words.stream().distinct().count() != words.size()
        || borders.size() != words.size() + 1
        || !rising
        || !(borders.get(0) > 0)) {
      throw new IllegalArgumentException(
          "a word scale has words, no two alike, and rising borders above 0, one more than words");
    }
  }

  /**
   * The word for a stiffness at the usual set-up. A stiffness on a border bears the stiffer one.
   */
  public String wordFor(double stiffnessNPerMm) {
    int i = 0;
    while (i < words.size() - 1 && stiffnessNPerMm >= bordersNPerMm.get(i + 1)) {
      i++;
    }
    return words.get(i);
  }

  /** The ask that a word stands for: the middle of its range, the range being its tolerance. */
  public Ask askFor(String word) {
    int i = words.indexOf(word);
    if (i < 0) {
      throw new IllegalArgumentException("\"" + word + "\" is not on the scale");
    }
    double low = bordersNPerMm.get(i);
    double high = bordersNPerMm.get(i + 1);
    return Ask.ofStiffness(usual, (low + high) / 2, 100 * (high - low) / (high + low));
  }

  /**
   * The same ranges under other names.
   *
   * @param others from soft to stiff, as many as there are words
   */
  public WordScale withWords(List<String> others) {
    return new WordScale(usual, others, bordersNPerMm);
  }
}
