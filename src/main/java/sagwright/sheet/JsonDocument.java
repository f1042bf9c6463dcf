package sagwright.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;

/**
 * Text to a tree of JSON, strictly: one document, no key twice, nothing after it. What Jackson
 * refuses comes out as a {@link BadDocumentException} with the key at which it stumbled.
 */
final class JsonDocument {
  /** No document of ours is a quarter as deep. */
  private static final int GREATEST_DEPTH = 40;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(GREATEST_DEPTH).build())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private JsonDocument() {}

  static JsonNode parse(String text) throws BadDocumentException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      return parse(parser);
    } catch (IOException e) {
      throw new IllegalStateException("text in memory is read without a fault", e);
    }
  }

  private static JsonNode parse(JsonParser parser) throws IOException, BadDocumentException {
    try {
      if (parser.nextToken() == null) {
        throw new BadDocumentException("", "is empty");
      }
      JsonNode node = JsonTree.read(parser);
      if (parser.nextToken() != null) {
        throw new BadDocumentException("", "holds more than one JSON document");
      }
      return node;
    } catch (JsonProcessingException e) {
      throw new BadDocumentException(path(parser.getParsingContext()), problem(e));
    }
  }

  private static String problem(JsonProcessingException e) {
    String said = e.getOriginalMessage();
    if (said.startsWith("Duplicate field")) {
      return "stands there twice";
    }
    if (e instanceof StreamConstraintsException) {
      return "is too long or nested too deep";
    }
    String where =
        e.getLocation() == null
            ? ""
            : " (line "
                + e.getLocation().getLineNr()
                + ", column "
                + e.getLocation().getColumnNr()
                + ")";
    if (said.contains("'NaN'") || said.contains("Infinity'") || said.contains("'INF'")) {
      return "is not a finite number" + where;
    }
    if (e instanceof JsonEOFException) {
      return "the document ends too early" + where;
    }
    return "is not JSON" + where;
  }

  private static String path(JsonStreamContext context) {
    if (context == null || context.inRoot()) {
      return "";
    }
    String parent = path(context.getParent());
    if (context.inArray()) {
      return parent + "[" + Math.max(0, context.getCurrentIndex()) + "]";
    }
    return context.getCurrentName() == null
        ? parent
        : JsonObject.join(parent, context.getCurrentName());
  }
}
