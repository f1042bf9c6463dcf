package sagwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against Jackson's own mapper. */
class JsonTreeTest {
  private static final JsonMapper MAPPER = new JsonMapper();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "[]",
        "null",
        "true",
        "\"Ébène \\\"noir\\\" \\u0001\\n\"",
        "12",
        "-7",
        "3000000000",
        "123456789012345678901234567890",
        "0.1",
        "1e-320",
        "1e400",
        "-0.0",
        "12340.000000000002",
        "{\"a\":{\"b\":[1,2.5,null,true,false,\"c\",[],{}]},\"d\":[{\"e\":1},[[0]]],\"\":0}",
      })
  void readsAndWritesAsTheMapperDoes(String json) throws Exception {
    JsonNode read = read(json);
    assertEquals(MAPPER.readTree(json), read);
    assertEquals(MAPPER.writeValueAsString(read), JsonLine.text(read));
  }

  @Test
  void whatIsJsonAlreadyIsWrittenAsItStands() throws Exception {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.putRawValue("kept", new RawValue("{\"a\": 1}"));
    assertEquals(MAPPER.writeValueAsString(node), JsonLine.text(node));
  }

  private static JsonNode read(String json) throws Exception {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      parser.nextToken();
      return JsonTree.read(parser);
    }
  }
}
