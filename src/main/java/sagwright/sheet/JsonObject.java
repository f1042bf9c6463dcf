package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;

/**
 * One object of a document with its path, read key by key. Every fault is a {@link
 * BadDocumentException} that names the key: unknown, missing, null, of the wrong kind, not finite,
 * out of range. Keys that begin with {@code x-} are left alone.
 */
final class JsonObject {
  private final JsonNode node;
  private final String path;

  /**
   * @param keys the keys that the object may have
   */
  JsonObject(JsonNode node, String path, String... keys) throws BadDocumentException {
    if (!node.isObject()) {
      throw new BadDocumentException(path, "is " + kindOf(node) + ", must be an object");
    }
    this.node = node;
    this.path = path;
    List<String> known = Arrays.asList(keys);
    Iterator<String> names = node.fieldNames();
    while (names.hasNext()) {
      String name = names.next();
      if (!known.contains(name) && !name.startsWith("x-")) {
        throw new BadDocumentException(join(path, name), "is not a known key" + meant(name, keys));
      }
    }
  }

  static String join(String path, String key) {
    String shown = oneLine(key);
    return path.isEmpty() ? shown : path + "." + shown;
  }

  String path(String key) {
    return join(path, key);
  }

  boolean has(String key) {
    return node.has(key);
  }

  BadDocumentException bad(String key, String problem) {
    return new BadDocumentException(path(key), problem);
  }

  double number(String key, NumberRange range) throws BadDocumentException {
    return numberOf(required(key), path(key), range);
  }

  double numberOr(String key, double fallback, NumberRange range) throws BadDocumentException {
    return has(key) ? number(key, range) : fallback;
  }

  Double numberOrNull(String key, NumberRange range) throws BadDocumentException {
    return has(key) ? Double.valueOf(number(key, range)) : null;
  }

  String text(String key) throws BadDocumentException {
    JsonNode value = required(key);
    if (!value.isTextual()) {
      throw bad(key, "is " + kindOf(value) + ", must be text");
    }
    return value.textValue();
  }

  String textOrNull(String key) throws BadDocumentException {
    return has(key) ? text(key) : null;
  }

  JsonObject object(String key, String... keys) throws BadDocumentException {
    return new JsonObject(required(key), path(key), keys);
  }

  List<JsonObject> objects(String key, String... keys) throws BadDocumentException {
    JsonNode array = array(key);
    List<JsonObject> objects = new ArrayList<>(array.size());
    for (JsonNode element : array) {
      objects.add(new JsonObject(element, path(key) + "[" + objects.size() + "]", keys));
    }
    return objects;
  }

  double[] numbers(String key) throws BadDocumentException {
    JsonNode array = array(key);
    double[] numbers = new double[array.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = numberOf(array.get(i), path(key) + "[" + i + "]", NumberRange.ANY);
    }
    return numbers;
  }

  /** A value as it may stand in a message: on one line, not too long, text in quotes. */
  String shown(String key) {
    return shown(node.get(key));
  }

  private JsonNode array(String key) throws BadDocumentException {
    JsonNode value = required(key);
    if (!value.isArray()) {
      throw bad(key, "is " + kindOf(value) + ", must be an array");
    }
    return value;
  }

  JsonNode required(String key) throws BadDocumentException {
    JsonNode value = node.get(key);
    if (value == null) {
      throw bad(key, "is missing");
    }
    return value;
  }

  private static double numberOf(JsonNode value, String at, NumberRange range)
      throws BadDocumentException {
    if (!value.isNumber()) {
      throw new BadDocumentException(at, "is " + kindOf(value) + ", must be a number");
    }
    double number = value.doubleValue();
    if (!Double.isFinite(number)) {
      throw new BadDocumentException(at, "is not a finite number");
    }
    String problem = range.problemOf(number);
    if (problem != null) {
      throw new BadDocumentException(at, "is " + shown(value) + ", " + problem);
    }
    return number;
  }

  static String kindOf(JsonNode value) {
    switch (value.getNodeType()) {
      case NULL:
        return "null";
      case BOOLEAN:
        return value.asText();
      case STRING:
        return "the text " + shown(value);
      case NUMBER:
        return "the number " + shown(value);
      case ARRAY:
        return "an array";
      default:
        return "an object";
    }
  }

  static String shown(JsonNode value) {
    String text = oneLine(value.asText());
    return value.isTextual() ? '"' + text + '"' : text;
  }

  private static String oneLine(String text) {
    String cut = text.length() > 40 ? text.substring(0, 40) + "…" : text;
    return cut.replaceAll("[\\p{Cntrl}\\p{Zl}\\p{Zp}]", "?");
  }

  /** Names the key that a slip of the finger was meant to be, where one is near. */
  private static String meant(String name, String... keys) {
    String bare = bare(name);
    for (String key : keys) {
      if (bare(key).equals(bare) || isOneSlipAway(bare(key), bare)) {
        return " (meant: " + key + "?)";
      }
    }
    return "";
  }

  private static String bare(String key) {
    return key.replaceAll("[^A-Za-z0-9]", "").toLowerCase(java.util.Locale.ROOT);
  }

  /** One letter too many, too few, wrong, or two changed over. */
  private static boolean isOneSlipAway(String a, String b) {
    int start = 0;
    while (start < Math.min(a.length(), b.length()) && a.charAt(start) == b.charAt(start)) {
      start++;
    }
    int endA = a.length();
    int endB = b.length();
    while (endA > start && endB > start && a.charAt(endA - 1) == b.charAt(endB - 1)) {
      endA--;
      endB--;
    }
    boolean changedOver =
        endA - start == 2
            && endB - start == 2
            && a.charAt(start) == b.charAt(start + 1)
            && a.charAt(start + 1) == b.charAt(start);
    return changedOver || endA - start <= 1 && endB - start <= 1;
  }
}
