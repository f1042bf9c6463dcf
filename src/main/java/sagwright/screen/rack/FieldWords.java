package sagwright.screen.rack;

import java.util.Map;
import java.util.regex.Pattern;

/** A refusal by the names that the form's fields have, instead of a sheet's keys. */
final class FieldWords {
  /** What is counted in brackets is counted from 1 for people. */
  private static final Pattern STATION =
      Pattern.compile("(?:shaft\\.)?stations\\[(\\d+)\\]\\.(x|depth|width)Mm");

  private static final Map<String, String> FIELDS =
      Map.of(
          "lengthMm",
          "length",
          "massG",
          "mass",
          "moisturePercent",
          "moisture",
          "say why",
          "why anew");

  private FieldWords() {}

  static String of(String refusal) {
    String words =
        STATION
            .matcher(refusal)
            .replaceAll(
                at -> "station " + (Integer.parseInt(at.group(1)) + 1) + ", " + at.group(2));
    for (Map.Entry<String, String> field : FIELDS.entrySet()) {
      words = words.replaceAll("(?:shaft\\.)?\\b" + field.getKey() + "\\b", field.getValue());
    }
    return words;
  }
}
