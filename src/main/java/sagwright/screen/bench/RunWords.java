package sagwright.screen.bench;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sagwright.job.RunsTogether;

/** Which runs an answer rests on, in words. */
final class RunWords {
  private RunWords() {}

  /**
   * "run 1", "runs 1 and 2", "runs 1 to 3", "runs 1, 3 and 4": those that count; with where the
   * load stood, if others were made elsewhere.
   */
  static String of(RunsTogether together) {
    boolean elsewhere = together.repeats().size() < together.runs().size();
    return numbers(together)
        + (elsewhere
            ? String.format(Locale.ROOT, ", load at %.0f", together.newest().setUp().loadMm())
            : "");
  }

  private static String numbers(RunsTogether together) {
    List<Integer> numbers =
        together.repeats().stream()
            .filter(run -> !together.standingOut().contains(run))
            .map(run -> together.runs().indexOf(run) + 1)
            .toList();
    int n = numbers.size();
    int first = numbers.get(0);
    int last = numbers.get(n - 1);
    if (n == 1) {
      return "run " + first;
    }
    if (n > 2 && last - first == n - 1) {
      return "runs " + first + " to " + last;
    }
    return "runs "
        + numbers.subList(0, n - 1).stream().map(String::valueOf).collect(Collectors.joining(", "))
        + " and "
        + last;
  }
}
