package sagwright.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.POJONode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.io.IOException;
import java.util.Map;

/**
 * Trees of JSON from Jackson's parser and to its generator, as its mapper would read and write
 * them. The mapper itself takes a tenth of a second to be made, which each command would wait for.
 */
final class JsonTree {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private JsonTree() {}

  /** The value at whose first token the parser stands; it is left at the last. */
  static JsonNode read(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> readObject(parser);
      case START_ARRAY -> readArray(parser);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_NUMBER_INT -> readWholeNumber(parser);
      case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      default -> throw new IllegalStateException("no value begins with " + parser.currentToken());
    };
  }

  private static ObjectNode readObject(JsonParser parser) throws IOException {
    ObjectNode object = NODES.objectNode();
    for (String key = parser.nextFieldName(); key != null; key = parser.nextFieldName()) {
      parser.nextToken();
      object.set(key, read(parser));
    }
    return object;
  }

  private static ArrayNode readArray(JsonParser parser) throws IOException {
    ArrayNode array = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      array.add(read(parser));
    }
    return array;
  }

  private static JsonNode readWholeNumber(JsonParser parser) throws IOException {
    return switch (parser.getNumberType()) {
      case INT -> NODES.numberNode(parser.getIntValue());
      case LONG -> NODES.numberNode(parser.getLongValue());
      default -> NODES.numberNode(parser.getBigIntegerValue());
    };
  }

  static void write(JsonNode node, JsonGenerator json) throws IOException {
    switch (node.getNodeType()) {
      case OBJECT -> {
        json.writeStartObject();
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
          json.writeFieldName(entry.getKey());
          write(entry.getValue(), json);
        }
        json.writeEndObject();
      }
      case ARRAY -> {
        json.writeStartArray();
        for (JsonNode each : node) {
          write(each, json);
        }
        json.writeEndArray();
      }
      case STRING -> json.writeString(node.textValue());
      case BOOLEAN -> json.writeBoolean(node.booleanValue());
      case NUMBER -> writeNumber(node, json);
      case POJO -> json.writeRawValue((String) ((RawValue) ((POJONode) node).getPojo()).rawValue());
      default -> json.writeNull();
    }
  }

  private static void writeNumber(JsonNode node, JsonGenerator json) throws IOException {
    if (node.isFloatingPointNumber()) {
      json.writeNumber(node.doubleValue());
    } else if (node.canConvertToLong()) {
      json.writeNumber(node.longValue());
    } else {
      json.writeNumber(node.bigIntegerValue());
    }
  }
}
