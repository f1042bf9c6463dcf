package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;

/** What a document says that it is; looked at before anything else in it. */
final class JsonFormat {
  private final String format;

  JsonFormat(JsonNode root) throws BadDocumentException {
    if (!root.isObject()) {
      throw new BadDocumentException("", "is " + JsonObject.kindOf(root) + ", must be an object");
    }
    JsonNode value = root.get("format");
    if (value == null) {
      throw new BadDocumentException("format", "is missing");
    }
    if (!value.isTextual()) {
      throw new BadDocumentException("format", "is " + JsonObject.kindOf(value) + ", must be text");
    }
    format = value.textValue();
  }

  String name() {
    return format;
  }

  /** Refuses any other, so that an order is not taken for a sheet. */
  void require(String wanted) throws BadDocumentException {
    if (!format.equals(wanted)) {
      throw wrong("\"" + wanted + "\"");
    }
  }

  BadDocumentException wrong(String wanted) {
    String shown = JsonObject.shown(com.fasterxml.jackson.databind.node.TextNode.valueOf(format));
    return new BadDocumentException("format", "is " + shown + ", must be " + wanted);
  }
}
