package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.job.RunsTogether;

/** Which runs an answer rests on, in words. */
final class RunWords {
  /** More numbers and stretches than these have no room in a line. */
  private static final int MOST_PARTS = 5;

  private RunWords() {}

  /**
   * "run 1", "runs 1 and 2", "runs 1 to 3", "runs 1, 3 and 4", "runs 1 to 27 and 29 to 39", "17
   * runs" where there are too many to name: those that count; with where the load stood, if others
   * were made elsewhere.
   */
  static String of(RunsTogether together) {
    boolean elsewhere = together.repeats().size() < together.runs().size();
    return numbers(together)
        + (elsewhere
            ? String.format(Locale.ROOT, ", load at %.0f", together.newest().setUp().loadMm())
            : "");
  }

  private static String numbers(RunsTogether together) {
    return inWords(
        together.repeats().stream()
            .filter(run -> !together.standingOut().contains(run))
            .map(run -> together.runs().indexOf(run) + 1)
            .toList());
  }

  /**
   * @param numbers rising, one or more
   */
  static String inWords(List<Integer> numbers) {
    List<String> parts = new ArrayList<>();
    for (int from = 0, to; from < numbers.size(); from = to) {
      to = from + 1;
      while (to < numbers.size() && numbers.get(to) == numbers.get(to - 1) + 1) {
        to++;
      }
      if (to - from > 2) {
        parts.add(numbers.get(from) + " to " + numbers.get(to - 1));
      } else {
        numbers.subList(from, to).forEach(number -> parts.add(String.valueOf(number)));
      }
    }
    if (numbers.size() == 1) {
      return "run " + parts.get(0);
    }
    int last = parts.size() - 1;
    if (last >= MOST_PARTS) {
      return numbers.size() + " runs";
    }
    return "runs "
        + (last == 0
            ? parts.get(0)
            : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last));
  }
}
