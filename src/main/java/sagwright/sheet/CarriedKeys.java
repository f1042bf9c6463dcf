package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.stream.StreamSupport;

/**
 * Carries keys that begin with {@code x-} from a document to the one that follows it, each into the
 * object that it stood in. Of a list, objects that say the same are the same; else those at the
 * same place, where both lists are of one length. What stood in an object that is gone, goes with
 * it.
 */
final class CarriedKeys {
  private CarriedKeys() {}

  /**
   * @return {@code next} on one line, with what it carries
   */
  static String carry(String former, String next) throws BadDocumentException {
    ObjectNode to = (ObjectNode) JsonDocument.parse(next);
    carry(JsonDocument.parse(former), to);
    return JsonLine.text(to);
  }

  private static void carry(JsonNode from, JsonNode to) {
    if (from instanceof ObjectNode before && to instanceof ObjectNode after) {
      for (Map.Entry<String, JsonNode> field : before.properties()) {
        if (isCarried(field.getKey())) {
          after.set(field.getKey(), field.getValue());
        } else if (after.has(field.getKey())) {
          carry(field.getValue(), after.get(field.getKey()));
        }
      }
    } else if (from instanceof ArrayNode before && to instanceof ArrayNode after) {
      for (int i = 0; i < after.size(); i++) {
        carry(sameIn(before, after, i), after.get(i));
      }
    }
  }

  private static boolean isCarried(String key) {
    return key.startsWith("x-") && !Remarks.OURS.contains(key);
  }

  /** The element that stood for the one at i before; a missing node for none. */
  private static JsonNode sameIn(ArrayNode before, ArrayNode after, int i) {
    return StreamSupport.stream(before.spliterator(), false)
        .filter(element -> saysTheSame(element, after.get(i)))
        .findFirst()
        .orElseGet(() -> before.path(before.size() == after.size() ? i : -1));
  }

  /** But for keys that begin with x-; 1473 and 1473.0 are the same number. */
  private static boolean saysTheSame(JsonNode a, JsonNode b) {
    if (a instanceof ObjectNode one && b instanceof ObjectNode other) {
      return has(one, other) && has(other, one);
    }
    return a.isNumber() && b.isNumber() ? a.doubleValue() == b.doubleValue() : a.equals(b);
  }

  private static boolean has(ObjectNode whole, ObjectNode part) {
    return part.properties().stream()
        .allMatch(
            field ->
                field.getKey().startsWith("x-")
                    || saysTheSame(field.getValue(), whole.path(field.getKey())));
  }
}
