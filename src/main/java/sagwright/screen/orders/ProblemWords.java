package sagwright.screen.orders;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sagwright.finish.FinishProblem;

/**
 * What an order cannot be, by the names that the form's fields have instead of a document's keys.
 */
final class ProblemWords {
  /** As a document has them; what is counted in brackets is counted from 1 for people. */
  private static final List<Map.Entry<String, String>> FIELDS =
      List.of(
          Map.entry("finish.diameterUncertaintyMm", "planed ±"),
          Map.entry("finish.cutFromMm", "cut from"),
          Map.entry("finish.ferrule.lengthMm", "ferrule"),
          Map.entry("finish.ferrule.boreMm", "bore"),
          Map.entry("finish.ferrule.densityKgM3", "metal"),
          Map.entry("finish.splice.fromMm", "splice"),
          Map.entry("finish.splice.coreHalfAtButtMm", "half core"),
          Map.entry("finish.splice.densityKgM3", "splice wood's density"),
          Map.entry("finish.splice.modulusMPa", "splice wood's modulus"),
          Map.entry("finish.splice.modulusUncertaintyPercent", "modulus ±"),
          Map.entry("finish.weights", "weight"),
          Map.entry("finish.extras", "extra"),
          Map.entry("finish.taper", "taper"),
          Map.entry("ask.massG", "weight"),
          Map.entry("ask.massToleranceG", "weight ±"),
          Map.entry("ask.balanceToleranceMm", "balance ±"),
          Map.entry("ask.stiffnessNPerMm", "stiffness"),
          Map.entry("ask.tolerancePercent", "tolerance"),
          Map.entry("ask.setup", "set-up"),
          Map.entry("alsoAsked", "further ask"));

  private static final Pattern PLACE = Pattern.compile("\\[(\\d+)\\](?:\\.(\\w+))?.*");

  /** The columns of weights and extras. */
  private static final Map<String, String> COLUMNS =
      Map.of(
          "fromMm", ", from",
          "toMm", ", to",
          "diameterMm", ", wide",
          "densityKgM3", ", metal",
          "xMm", ", x",
          "massG", ", weight");

  private ProblemWords() {}

  static String of(FinishProblem problem) {
    for (Map.Entry<String, String> field : FIELDS) {
      if (problem.key().startsWith(field.getKey())) {
        String rest = problem.key().substring(field.getKey().length());
        Matcher place = PLACE.matcher(rest);
        return field.getValue()
            + (place.matches() ? counted(place) : "")
            + ": "
            + problem.whatIsWrong();
      }
    }
    return problem.key() + ": " + problem.whatIsWrong();
  }

  private static String counted(Matcher place) {
    String key = place.group(2) == null ? "" : place.group(2);
    return " " + (Integer.parseInt(place.group(1)) + 1) + COLUMNS.getOrDefault(key, "");
  }
}
