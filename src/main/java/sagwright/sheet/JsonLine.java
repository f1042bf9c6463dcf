package sagwright.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;

/**
 * Builds one JSON object on one line, keys in the order in which they were put. Doubles are written
 * in the shortest form that reads back the same; one that is not finite is written as null.
 */
public final class JsonLine {
  // Double.toString is not always the shortest before Java 19, Jackson's fast writer is
  static final JsonFactory FACTORY =
      new JsonFactoryBuilder()
          .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
          .rootValueSeparator("\n")
          .build();

  private final ObjectNode node;

  public JsonLine() {
    this(JsonNodeFactory.instance.objectNode());
  }

  private JsonLine(ObjectNode node) {
    this.node = node;
  }

  /** An object that was written before, to be read or to be added to. */
  public static JsonLine parse(String json) {
    return new JsonLine((ObjectNode) tree(json));
  }

  /** The number under a key; null where there is none. */
  public Double number(String key) {
    return node.path(key).isNumber() ? node.get(key).doubleValue() : null;
  }

  /** The text under a key; null where there is none. */
  public String text(String key) {
    return node.path(key).textValue();
  }

  /** Whether true stands under a key. */
  public boolean flag(String key) {
    return node.path(key).booleanValue();
  }

  /** The numbers of the array under a key; none where there is none. */
  public double[] numbers(String key) {
    return StreamSupport.stream(node.path(key).spliterator(), false)
        .mapToDouble(JsonNode::doubleValue)
        .toArray();
  }

  /** The texts of the array under a key; none where there is none. */
  public List<String> texts(String key) {
    return texts(node.path(key));
  }

  /** What stands under a key, as JSON; an empty array where nothing does. */
  public String json(String key) {
    return node.has(key) ? text(node.get(key)) : "[]";
  }

  /** Texts as a JSON array. */
  static String arrayOf(List<String> texts) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    texts.forEach(array::add);
    return text(array);
  }

  /** The texts of a JSON array that was written before. */
  public static List<String> textsOf(String json) {
    if (json.equals("[]")) {
      return List.of();
    }
    return texts(tree(json));
  }

  private static JsonNode tree(String json) {
    try (JsonParser parser = FACTORY.createParser(json)) {
      parser.nextToken();
      return JsonTree.read(parser);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> texts(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).map(JsonNode::textValue).toList();
  }

  /** The object under a key, to be read or to be added to in its place. */
  public JsonLine object(String key) {
    return new JsonLine((ObjectNode) node.get(key));
  }

  /** The same where it may be missing, or something else may stand there: null then. */
  public JsonLine objectOrNull(String key) {
    return node.path(key).isObject() ? object(key) : null;
  }

  /** The objects of the list under a key; none where there is no such list. */
  public List<JsonLine> objects(String key) {
    List<JsonLine> objects = new ArrayList<>();
    for (JsonNode each : node.path(key)) {
      if (each instanceof ObjectNode object) {
        objects.add(new JsonLine(object));
      }
    }
    return objects;
  }

  JsonLine keep(String... keys) {
    node.retain(keys);
    return this;
  }

  /** This object less some keys. */
  public JsonLine without(String... keys) {
    node.remove(List.of(keys));
    return this;
  }

  public JsonLine put(String key, String text) {
    node.put(key, text);
    return this;
  }

  public JsonLine put(String key, double value) {
    if (Double.isFinite(value)) {
      node.put(key, value);
    } else {
      node.putNull(key);
    }
    return this;
  }

  public JsonLine put(String key, Double value) {
    return value == null ? putNull(key) : put(key, value.doubleValue());
  }

  public JsonLine put(String key, long value) {
    node.put(key, value);
    return this;
  }

  public JsonLine put(String key, boolean value) {
    node.put(key, value);
    return this;
  }

  public JsonLine putNull(String key) {
    node.putNull(key);
    return this;
  }

  public JsonLine put(String key, JsonLine object) {
    node.set(key, object.node);
    return this;
  }

  /** A document that is JSON already, as it stands; null for none. */
  public JsonLine putJson(String key, String json) {
    if (json == null) {
      return putNull(key);
    }
    node.putRawValue(key, new RawValue(json));
    return this;
  }

  public JsonLine putTexts(String key, List<String> texts) {
    texts.forEach(node.putArray(key)::add);
    return this;
  }

  public JsonLine putNumbers(String key, double[] numbers) {
    var array = node.putArray(key);
    for (double number : numbers) {
      array.add(number);
    }
    return this;
  }

  public JsonLine putWhole(String key, List<Integer> numbers) {
    numbers.forEach(node.putArray(key)::add);
    return this;
  }

  public JsonLine putObjects(String key, List<JsonLine> objects) {
    var array = node.putArray(key);
    objects.forEach(object -> array.add(object.node));
    return this;
  }

  /** A tree as one line. */
  static String text(JsonNode node) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      JsonTree.write(node, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  @Override
  public String toString() {
    return text(node);
  }
}
