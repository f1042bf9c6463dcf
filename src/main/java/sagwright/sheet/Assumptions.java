package sagwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** Takes defaults where a document says nothing and notes their names, in the order asked. */
final class Assumptions {
  private final List<String> names = new ArrayList<>();

  /** The value of a key that must not be below 0; its default, noted, where it was left out. */
  double orAssume(JsonObject object, String key, double fallback) throws BadDocumentException {
    if (object == null || !object.has(key)) {
      names.add(key);
      return fallback;
    }
    return object.number(key, NumberRange.NOT_NEGATIVE);
  }

  List<String> names() {
    return names;
  }
}
