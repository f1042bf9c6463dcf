package sagwright.sheet;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;

/** A good document with one thing changed in it. */
final class MutatedJson {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private MutatedJson() {}

  /**
   * @param pointer as /shaft/massG
   * @param value the JSON to be put there, as it stands (also 1e999); "REMOVE" takes the key out
   */
  static String of(String document, String pointer, String value) {
    try {
      JsonNode root = MAPPER.readTree(document);
      JsonPointer at = JsonPointer.compile(pointer);
      String last = at.last().getMatchingProperty();
      JsonNode parent = root.at(at.head());
      if (parent.isMissingNode()) {
        throw new IllegalArgumentException("nothing there: " + pointer);
      }
      if (value.equals("REMOVE")) {
        JsonNode removed =
            parent instanceof ObjectNode object
                ? object.remove(last)
                : ((ArrayNode) parent).remove(Integer.parseInt(last));
        if (removed == null) {
          throw new IllegalArgumentException("nothing to remove: " + pointer);
        }
      } else if (parent instanceof ObjectNode object) {
        object.putRawValue(last, new RawValue(value));
      } else {
        ((ArrayNode) parent)
            .set(Integer.parseInt(last), MAPPER.getNodeFactory().rawValueNode(new RawValue(value)));
      }
      return MAPPER.writeValueAsString(root);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }
}
