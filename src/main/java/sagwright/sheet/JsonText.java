package sagwright.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Writes one JSON object on one line as it is put together, as {@link JsonLine} would write it; for
 * answers that are written by the thousand.
 */
final class JsonText {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private final StringWriter text = new StringWriter(1024);
  private final JsonGenerator json;

  JsonText() {
    try {
      json = FACTORY.createGenerator(text);
      json.writeStartObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What Jackson may throw, though a text in memory never gives cause. */
  private interface Writing {
    void write() throws IOException;
  }

  private JsonText then(Writing writing) {
    try {
      writing.write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  JsonText put(String key, String value) {
    return then(() -> json.writeStringField(key, value));
  }

  JsonText put(String key, boolean value) {
    return then(() -> json.writeBooleanField(key, value));
  }

  /** Null where it is null or not finite. */
  JsonText put(String key, Double value) {
    return then(
        () -> {
          if (value == null || !Double.isFinite(value)) {
            json.writeNullField(key);
          } else {
            json.writeNumberField(key, value.doubleValue());
          }
        });
  }

  JsonText putTexts(String key, List<String> texts) {
    return then(
        () -> {
          json.writeArrayFieldStart(key);
          for (String each : texts) {
            json.writeString(each);
          }
          json.writeEndArray();
        });
  }

  JsonText beginArray(String key) {
    return then(() -> json.writeArrayFieldStart(key));
  }

  JsonText endArray() {
    return then(json::writeEndArray);
  }

  JsonText beginObject() {
    return then(json::writeStartObject);
  }

  JsonText endObject() {
    return then(json::writeEndObject);
  }

  /** Ends the object. */
  String end() {
    then(
        () -> {
          json.writeEndObject();
          json.close();
        });
    return text.toString();
  }
}
